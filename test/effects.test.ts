/** What an operation takes moves its answer or is refused: a field that never does either would be taken and dropped. */
import { describe, expect, it } from 'vitest'
import { DesignError } from '../src/domain/design-error.ts'
import { operations } from '../src/http/operations.ts'
import type { Operation } from '../src/http/wire/operation.ts'
import { requestValidator } from '../src/http/wire/request/request-validator.ts'
import { branches, requestSchema, resolved, type Schema } from './support/contract-judge.ts'
import { nearExample, pick, type Random, type Spot, seeded, spots, valueFor } from './support/random-requests.ts'
import { seldomDefaults } from './support/seldom-defaults.ts'
import { seldomFields } from './support/seldom-fields.ts'

type Holder = Record<string, unknown>

const isHolder = (value: unknown): value is Holder => typeof value === 'object' && value !== null

/** The one word that a field of a branch may hold. */
function wordOf(schema: Schema): unknown {
  const { const: word, enum: words = [] } = resolved(schema)
  return word ?? (words.length === 1 ? words[0] : undefined)
}

/** Words that tell the branches of a union apart, as the value has them. */
const tagsOf = (schema: Schema, value: Holder): string =>
  Object.entries(schema.properties ?? {})
    .filter(([, inner]) => wordOf(inner) !== undefined)
    .map(([name]) => String(value[name]))
    .join()

const fits = (schema: Schema, value: unknown): boolean =>
  isHolder(value) &&
  (Array.isArray(value)
    ? schema.items !== undefined
    : schema.properties !== undefined &&
      Object.entries(schema.properties).every(([name, inner]) => {
        const word = wordOf(inner)
        return word === undefined || word === value[name]
      }))

/** The branch of a union that a value is of is followed, and named by its words. */
const byBranch = {
  readings: (value: unknown, schemas: readonly Schema[]) => {
    const branch = schemas.find(each => fits(each, value))
    return branch === undefined ? [] : [branch]
  },
  called: (value: unknown, schemas: readonly Schema[]) => {
    const branch = schemas.length > 1 && isHolder(value) ? schemas.find(each => fits(each, value)) : undefined
    const words = branch === undefined ? '' : tagsOf(branch, value as Holder)
    return words === '' ? '' : `(${words})`
  },
  absent: true
}

/** Fields that may hold more than one word; the items of a list are no fields. */
const placesOf = (path: string, request: Holder): readonly Spot[] =>
  spots(request, branches(requestSchema(path)), byBranch).filter(
    ({ holder, schemas }) =>
      !Array.isArray(holder) && !(schemas.length === 1 && wordOf(schemas[0] as Schema) !== undefined)
  )

function* trialsOf({ holder, name, schemas, optional }: Spot, random: Random): Generator<unknown> {
  const old = holder[name]
  if (old !== undefined && optional) yield undefined
  if (typeof old === 'number') yield* [old * 1.3, old * 0.7, old + 1, old * 4]
  for (let n = 0; n < 6; n++) yield valueFor(pick(random, schemas), random, 0.5)
}

/** Result and doubts, or refusal; what is assumed only repeats what was not said. */
function said({ answerText }: Operation, request: unknown): { readonly refused: boolean; readonly text: string } {
  try {
    const { result, cautions } = JSON.parse(answerText(request, { digits: 'full', basis: false }))
    return { refused: false, text: JSON.stringify([result, cautions]) }
  } catch (error) {
    if (error instanceof DesignError) return { refused: true, text: `${error.code} ${error.message}` }
    throw error
  }
}

const ajv = requestValidator()

/** @returns the fields that were tried, and those that never moved an answer */
function idle(operation: Operation, near: number): { readonly tried: ReadonlySet<string>; readonly still: string[] } {
  const { path, examples, body } = operation
  const random = seeded(7)
  const valid = ajv.compile(body)
  const worked = [
    ...Object.values(examples).map(({ request }) => request),
    ...(seldomDefaults[path] ?? []),
    ...(seldomFields[path] ?? [])
  ]
  const varied = worked.flatMap(request => Array.from({ length: near }, () => nearExample(path, request, random)))
  const tried = new Set<string>()
  const moved = new Set<string>()
  for (const base of [...worked, ...varied].filter(request => valid(request))) {
    const request = structuredClone(base) as Holder
    const before = said(operation, request)
    if (before.refused) continue
    for (const place of placesOf(path, request)) {
      const { id, holder, name } = place
      tried.add(id)
      if (moved.has(id)) continue
      const old = holder[name]
      for (const trial of trialsOf(place, random)) {
        if (trial === undefined) delete holder[name]
        else holder[name] = trial
        if (valid(request) && said(operation, request).text !== before.text) {
          moved.add(id)
          break
        }
      }
      if (old === undefined) delete holder[name]
      else holder[name] = old
    }
  }
  return { tried, still: [...tried].filter(id => !moved.has(id)).map(id => `${path} ${id}`) }
}

/** Fields that an operation takes with a sheet that others read, or to be drawn only. */
const idleByNature = [
  '/v1/enclosures/sizing /driver/powerW',
  '/v1/enclosures/tolerance /driver/powerW',
  // A box stands on the floor: how high a block rises beside it is drawn, and no more.
  '/v1/boxes/panels /limits/keepOuts/[]/heightMm'
]

describe('fields of a request', () => {
  for (const operation of operations.filter(({ path }) => !/plans|designs|drawings|model/.test(path))) {
    it(`of ${operation.operationId} move its answer or are refused`, () => {
      const { tried, still } = idle(operation, operation.heavy === true ? 2 : 40)
      expect(tried.size).toBeGreaterThan(3)
      expect(still.filter(id => !idleByNature.includes(id))).toEqual([])
    }, 300_000)
  }
})
