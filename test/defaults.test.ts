/** Judgement values are records: each says unit, reason and grounds, is used, and moves an answer when it is changed. */
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { sources } from '../src/contract/sources/source.ts'
import { DesignError } from '../src/domain/design-error.ts'
import { operations } from '../src/http/operations.ts'
import type { Operation } from '../src/http/wire/operation.ts'
import { requestValidator } from '../src/http/wire/request/request-validator.ts'
import { seldomDefaults } from './support/seldom-defaults.ts'
import { sourceFiles, src } from './support/source-map.ts'

interface Judgement {
  readonly name: string
  readonly record: { value?: unknown; unit?: unknown; why?: unknown; source?: unknown }
}

const rooms = sourceFiles()
  .map(({ file }) => file)
  .filter(file => /^domain\/.*\/defaults\.ts$/.test(file))

const judgements: Judgement[] = []

beforeAll(async () => {
  for (const file of rooms) {
    const tables = (await import(path.join(src, file))) as Readonly<Record<string, unknown>>
    for (const [table, records] of Object.entries(tables))
      if (typeof records === 'object' && records !== null)
        for (const [key, record] of Object.entries(records as Readonly<Record<string, Judgement['record']>>))
          if (typeof record === 'object') judgements.push({ name: `${file} ${table}.${key}`, record })
  }
})

/** Names of records that a piece of work reads the value of. */
function readsOf(work: () => unknown): ReadonlySet<string> {
  const read = new Set<string>()
  const restore = judgements
    .filter(({ record }) => 'value' in record)
    .map(({ name, record }) => {
      const { value } = record
      Object.defineProperty(record, 'value', {
        configurable: true,
        enumerable: true,
        get: () => {
          read.add(name)
          return value
        }
      })
      return () =>
        Object.defineProperty(record, 'value', { value, writable: true, enumerable: true, configurable: true })
    })
  work()
  for (const back of restore) back()
  return read
}

const otherWord: Readonly<Record<string, string>> = {
  rms: 'peak',
  power: 'price',
  rectangular: 'wedge',
  front: 'back',
  butt: 'mitre',
  between: 'over',
  over: 'between',
  parallel: 'series',
  lower: 'coil-heat',
  copper: 'aluminium',
  round: 'slot',
  sharp: 'flared',
  'full-width': 'own',
  free: 'flanged',
  flanged: 'free',
  mdf: 'chipboard'
}

/** Other values of the same kind, near enough to be computable. */
function others(value: unknown): readonly unknown[] {
  if (typeof value === 'number') {
    if (value === 0) return [0.05]
    return Number.isInteger(value) && value < 5 ? [value + 1, value + 3] : [value * 1.25, value * 2.5, value * 0.8]
  }
  if (typeof value === 'boolean') return [!value]
  if (!Array.isArray(value)) return [otherWord[`${value}`]]
  return [typeof value[0] === 'number' ? value.map(each => each * 1.25) : value.slice(1)]
}

/** Words that change nothing, for they say how a figure is read and no other reading is accepted. */
const onlyTold = [
  'domain/amplifier/defaults.ts amplifierDefaults.ratingKind',
  'domain/amplifier/defaults.ts amplifierDefaults.driverRatingKind',
  'domain/signal/defaults.ts signalDefaults.ratingKind'
]

/** The request with one field left out, for every field down to a depth. */
function* withoutOne(value: unknown, depth: number): Generator<unknown> {
  if (typeof value !== 'object' || value === null || depth === 0) return
  for (const key of Object.keys(value)) {
    const { [key]: inner, ...rest } = value as Readonly<Record<string, unknown>>
    if (!Array.isArray(value)) yield rest
    for (const smaller of withoutOne(inner, depth - 1))
      yield Array.isArray(value) ? Object.assign([...value], { [key]: smaller }) : { ...rest, [key]: smaller }
  }
}

interface Asked {
  readonly operation: Operation
  readonly request: unknown
}

let asks = 0

/** Result and cautions; what is assumed repeats the record and proves nothing. Of a plan its readings, which no other operation has. */
function answer({ operation, request }: Asked): string {
  const isPlan = operation.path === '/v1/plans'
  // under a name of its own, since a plan that was made before is only told again
  const fresh = isPlan ? { ...(request as object), name: `plan ${asks++}` } : request
  try {
    const { result, cautions } = JSON.parse(operation.answerText(fresh, { digits: 'full', basis: false }))
    return JSON.stringify(isPlan ? result.readings : [result, cautions])
  } catch (error) {
    return error instanceof DesignError ? error.code : 'unfit'
  }
}

const ajv = requestValidator()

/** All but drawings, plans and their search, which take their values through the other operations; plans alone take readings. */
const asked: readonly Asked[] = operations
  .filter(({ path: url }) => !/designs\/(search|merge)|drawings/.test(url))
  .flatMap(operation => {
    if (operation.path === '/v1/plans')
      return (seldomDefaults[operation.path] ?? []).map(request => ({ operation, request }))
    const valid = ajv.compile(operation.body)
    return [
      ...Object.values(operation.examples).map(({ request }) => request as unknown),
      ...(seldomDefaults[operation.path] ?? [])
    ]
      .flatMap(request => [request, ...withoutOne(request, operation.heavy ? 1 : 9)])
      .filter(request => valid(request))
      .map(request => ({ operation, request }))
  })

describe('judgement values', () => {
  it('stand in the defaults of their rooms, each with unit, reason and grounds', () => {
    expect(judgements.length).toBeGreaterThan(120)
    const grounds = [...Object.keys(sources), 'practice', 'ours', 'derived']
    const wrong = judgements.filter(
      ({ record }) =>
        !grounds.includes(`${record.source}`) ||
        `${record.why ?? ''}`.length < 8 ||
        ('value' in record && `${record.unit ?? ''}` === '')
    )
    expect(wrong.map(({ name }) => name)).toEqual([])
  })

  it('are not typed at the place of use', () => {
    const typed = sourceFiles()
      .map(({ file }) => file)
      .filter(file => /^domain\/(?!assume\.ts)/.test(file))
      .filter(file =>
        /\bassumed?\.(or\b|(take|work|note)\([^()]*\{ value)/.test(readFileSync(path.join(src, file), 'utf8'))
      )
    expect(typed).toEqual([])
  })

  it('move an answer when they are changed', () => {
    const readers = new Map<string, Asked[]>()
    for (const each of asked)
      for (const name of readsOf(() => answer(each))) readers.set(name, [...(readers.get(name) ?? []), each])
    const before = new Map(asked.map(each => [each, answer(each)]))
    const moves = ({ name, record }: Judgement) => {
      const { value } = record
      return others(value).some(changed =>
        (readers.get(name) ?? []).some(each => {
          record.value = changed
          const after = answer(each)
          record.value = value
          return after !== before.get(each)
        })
      )
    }
    const still = judgements.filter(judgement => 'value' in judgement.record && !moves(judgement))
    expect(still.map(({ name }) => name)).toEqual(onlyTold)
  }, 300_000)
})
