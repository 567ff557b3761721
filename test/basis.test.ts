/** `?basis=true` explains figures so that a reader can work them out: a general-purpose evaluator does, for every example. */
import { evaluate } from 'mathjs'
import { describe, expect, it } from 'vitest'
import { siField } from '../src/contract/field/wire-units.ts'
import { sources } from '../src/contract/sources/source.ts'
import { operations } from '../src/http/operations.ts'
import { post } from './support/call.ts'
import { contractFaults } from './support/contract-judge.ts'

interface Entry {
  readonly quantity: string
  readonly formula: string
  readonly inputs: readonly { readonly symbol: string; readonly value: number; readonly unit: string }[]
  readonly value: number
  readonly unit: string
  readonly source: string
}

const tokens = (pointer: string) =>
  pointer
    .split('/')
    .slice(1)
    .map(token => token.replaceAll('~1', '/').replaceAll('~0', '~'))

function at(result: unknown, pointer: string): unknown {
  return tokens(pointer).reduce((here, token) => (here as Record<string, unknown> | undefined)?.[token], result)
}

/** What the result says of the quantity, in SI; the last name that is no index carries the unit. */
function said(result: unknown, pointer: string): number | undefined {
  const value = at(result, pointer)
  const name = tokens(pointer).findLast(token => !/^\d+$/.test(token)) ?? ''
  return typeof value === 'number' ? value / siField(name).perSi : undefined
}

const answers = new Map<string, ReturnType<typeof post>>()

/** Each example is asked once; some of them search for a while. */
function explained(path: string, name: string, request: unknown): ReturnType<typeof post> {
  const key = `${path} ${name}`
  const known = answers.get(key) ?? post(`${path}?digits=full&basis=true`, request)
  answers.set(key, known)
  return known
}

const relative = (a: number, b: number) => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-12)

describe('basis', () => {
  for (const { path, operationId, examples } of operations) {
    for (const [name, { request }] of Object.entries(examples)) {
      it(`${operationId} explains its example ${name} in figures that can be worked out again`, async () => {
        const { body } = await explained(path, name, request)
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        for (const entry of body.basis as readonly Entry[]) {
          const scope = Object.fromEntries(entry.inputs.map(({ symbol, value }) => [symbol, value]))
          const worked = Number(evaluate(entry.formula, scope))
          expect(
            relative(worked, entry.value),
            `${entry.quantity}: ${entry.formula} gives ${worked}, said ${entry.value}`
          ).toBeLessThan(1e-9)
          const figure = said(body.result, entry.quantity)
          expect(figure, `${entry.quantity} is a number of the result`).toBeTypeOf('number')
          expect(
            relative(Number(figure), entry.value),
            `${entry.quantity} is ${figure} in the result, ${entry.value} in its basis`
          ).toBeLessThan(1e-9)
          expect(Object.keys(sources)).toContain(entry.source)
          expect(entry.unit.length).toBeGreaterThan(0)
        }
      })
    }
  }

  it('is given by most operations', async () => {
    const withBasis = await Promise.all(
      operations.map(async ({ path, examples }) => {
        const all = Object.entries(examples).map(([name, { request }]) => explained(path, name, request))
        return (await Promise.all(all)).some(({ body }) => body.basis.length > 0)
      })
    )
    expect(withBasis.filter(Boolean).length).toBeGreaterThan(operations.length / 2)
  })

  it('is left out unless asked for, and changes nothing else', async () => {
    const payload = { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }
    const plain = await post('/v1/coils/wiring', payload)
    const withBasis = await post('/v1/coils/wiring?basis=true', payload)
    expect(plain.body.basis).toBeUndefined()
    const { basis, ...rest } = withBasis.body
    expect(rest).toEqual(plain.body)
    expect(basis.length).toBeGreaterThan(0)
  })
})
