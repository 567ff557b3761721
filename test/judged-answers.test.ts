/** A judgement value moves an answer when it is changed: one that moves none decides nothing. */
import { describe, expect, it } from 'vitest'
import { DesignError } from '../src/domain/design-error.ts'
import { operations } from '../src/http/operations.ts'
import type { Operation } from '../src/http/wire/operation.ts'
import { requestValidator } from '../src/http/wire/request/request-validator.ts'
import { type Judgement, judgementsOf, others, readsOf } from './support/judgements.ts'
import { seldomDefaults } from './support/seldom-defaults.ts'

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

/** What is assumed repeats the record and proves nothing. */
const unassumed = (key: string, value: unknown) => (key === 'assumed' ? undefined : value)

/** Result and cautions of an answer. */
function answer({ operation, request }: Asked): string {
  // under a name of its own, since a plan that was made before is only told again
  const fresh = operation.path === '/v1/plans' ? { ...(request as object), name: `plan ${asks++}` } : request
  try {
    const { result, cautions } = JSON.parse(operation.answerText(fresh, { digits: 'full', basis: false }), unassumed)
    return JSON.stringify([{ ...result, request: undefined, name: undefined }, cautions])
  } catch (error) {
    return error instanceof DesignError ? error.code : 'unfit'
  }
}

const ajv = requestValidator()

/** Examples and requests in which a value speaks, each also with a field left out. */
const asked = (those: RegExp, depth: (operation: Operation) => number): readonly Asked[] =>
  operations
    .filter(({ path }) => those.test(path))
    .flatMap(operation => {
      const valid = ajv.compile(operation.body)
      return [
        ...Object.values(operation.examples).map(({ request }) => request as unknown),
        ...(seldomDefaults[operation.path] ?? [])
      ]
        .flatMap(request => [request, ...withoutOne(request, depth(operation))])
        .filter(request => valid(request))
        .map(request => ({ operation, request }))
    })

/** Those whose value moves none of the answers. */
function unmoved(judgements: readonly Judgement[], questions: readonly Asked[]): readonly string[] {
  const readers = new Map<string, Asked[]>()
  for (const each of questions)
    for (const name of readsOf(judgements, () => answer(each))) readers.set(name, [...(readers.get(name) ?? []), each])
  const before = new Map(questions.map(each => [each, answer(each)]))
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
  return judgements.filter(judgement => 'value' in judgement.record && !moves(judgement)).map(({ name }) => name)
}

describe('judgement values', () => {
  it('of the trade move an answer when they are changed', async () => {
    const questions = asked(/^(?!.*(designs\/(search|merge)|drawings))/, ({ path, heavy }) =>
      path === '/v1/plans' ? 0 : heavy ? 1 : 9
    )
    expect(unmoved(await judgementsOf('domain'), questions)).toEqual(onlyTold)
  }, 600_000)
})
