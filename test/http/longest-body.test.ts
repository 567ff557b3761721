/** Whatever fills a body to the byte limit is refused with work that is bounded by the contract, not by the bytes. */
import { describe, expect, it, vi } from 'vitest'
import { operations } from '../../src/http/operations.ts'
import { defaultSettings } from '../../src/http/serving/settings.ts'
import { Refusal } from '../../src/http/wire/problem/refusal.ts'
import { MOST_ITEMS, readJson } from '../../src/http/wire/request/json-reader.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { post } from '../support/call.ts'
import { branches, requestSchema, type Schema } from '../support/contract-judge.ts'

const { bodyLimitBytes } = defaultSettings()

interface List {
  readonly at: readonly string[]
  readonly schema: Schema
}

/** Every list of a request, by the names that lead to it; the first entry stands for all of an outer list. */
function lists(schema: Schema, at: readonly string[] = []): readonly List[] {
  return branches(schema).flatMap(here => [
    ...(here.items === undefined ? [] : [{ at, schema: here }, ...lists(here.items, [...at, '0'])]),
    ...Object.entries(here.properties ?? {}).flatMap(([name, inner]) => lists(inner, [...at, name]))
  ])
}

/** A request that is nothing but the way to one value. */
const leadingTo = (at: readonly string[], text: string) =>
  at.reduceRight((inner, token) => (token === '0' ? `[${inner}]` : `{"${token}":${inner}}`), text)

const repeated = (item: string, bytes: number) =>
  `[${Array.from({ length: Math.floor(bytes / (item.length + 1)) }, () => item).join(',')}]`

/** Entries that ajv copies while it collects: it hands the faults of each entry on by `concat`. */
async function copied(send: () => Promise<unknown>): Promise<number> {
  const real = Array.prototype.concat
  let count = 0
  const spy = vi.spyOn(Array.prototype, 'concat').mockImplementation(function (this: unknown[], ...more: unknown[]) {
    count += this.length
    return real.apply(this, more)
  })
  try {
    await send()
  } finally {
    spy.mockRestore()
  }
  return count
}

const room = bodyLimitBytes - 1000
/** Ten entries copied for each byte the service reads. */
const MOST_COPIED = 10 * bodyLimitBytes

describe('the longest body', () => {
  it('no list of a request is longer than the reader takes', () => {
    const bounds = operations.flatMap(({ path }) => lists(requestSchema(path)).map(({ schema }) => schema.maxItems))
    expect(bounds).not.toContain(undefined)
    expect(Math.max(...(bounds as number[]))).toBe(MOST_ITEMS)
  })

  it('a longer list is refused where it ends being readable, and nothing behind it is looked at', () => {
    const text = (entries: number) =>
      `{"a":{"b":[${Array.from({ length: entries }, () => '0').join(',')}]},"c":1,"c":2}`
    const refusal = (entries: number) => {
      try {
        readJson(text(entries))
      } catch (error) {
        if (error instanceof Refusal) return { code: error.code, errors: error.errors }
      }
      return undefined
    }
    expect(refusal(MOST_ITEMS)).toMatchObject({ code: 'unreadable-body', errors: [{ code: 'duplicate-name' }] })
    expect(refusal(MOST_ITEMS + 1)).toMatchObject({
      code: 'invalid-request',
      errors: [{ pointer: '/a/b', code: 'too-many', bounds: { maxItems: MOST_ITEMS } }]
    })
  })

  for (const { path } of operations) {
    const found = lists(requestSchema(path))
    it(`${path}: each of its ${found.length} lists, filled with whatever`, async () => {
      for (const { at, schema } of found) {
        const { maxItems = 0 } = schema
        for (const item of ['{}', '0', '[]']) {
          for (const bytes of [room, (item.length + 1) * MOST_ITEMS, (item.length + 1) * (maxItems + 1)]) {
            const body = leadingTo(at, repeated(item, bytes))
            let reply: Awaited<ReturnType<typeof post>> | undefined
            const copies = await copied(async () => {
              reply = await post(path, body)
            })
            expect(reply?.status, body.slice(0, 80)).toBe(400)
            expect(reply?.body.errors.length).toBeLessThanOrEqual(50)
            expect(copies, `${path} ${at.join('/')} ${item}`).toBeLessThan(MOST_COPIED)
          }
        }
      }
    })

    it(`${path}: all lists at once, as long as the contract lets them be`, async () => {
      const full = Object.entries(branches(requestSchema(path))[0]?.properties ?? {}).flatMap(([name, inner]) =>
        lists(inner, [name])
          .filter(({ at }) => !at.includes('0'))
          .slice(0, 1)
          .map(({ at, schema }) => leadingTo(at, repeated('{}', 3 * (schema.maxItems ?? 0))).slice(1, -1))
      )
      const copies = await copied(() => post(path, `{${full.join(',')}}`))
      expect(copies).toBeLessThan(MOST_COPIED)
    })
  }

  it('a batch of calls with endless lists: every call is refused on its own, at the price of its lists', async () => {
    const search = JSON.stringify({ operationId: 'searchDesigns', request: {} }).replace(
      '{}',
      `{"drivers":${repeated('{}', 3 * 300)},"amplifiers":${repeated('{}', 3 * 300)}}`
    )
    const calls = Array.from({ length: 100 }, () => search)
    let reply: Awaited<ReturnType<typeof post>> | undefined
    const copies = await copied(async () => {
      reply = await post('/v1/batches', `{"calls":[${calls.join(',')}]}`)
    })
    expect(reply?.status).toBe(200)
    const codes = reply?.body.items.flatMap((item: { problem: { errors: { code: string; pointer: string }[] } }) =>
      item.problem.errors.map(({ code, pointer }) => `${pointer} ${code}`)
    )
    expect([...new Set(codes)]).toEqual(['/drivers too-many', '/amplifiers too-many'])
    expect(copies).toBeLessThan(MOST_COPIED)
  })

  it('the count tells: left to itself the validator copies a thousand times more than it is sent', async () => {
    const validate = requestValidator().getSchema('DesignSearchRequest')
    const many = Array.from({ length: 2000 }, () => ({}))
    const copies = await copied(async () => validate?.({ drivers: many, amplifiers: many }))
    expect(copies).toBeGreaterThan(1000 * 2 * many.length)
  })
})
