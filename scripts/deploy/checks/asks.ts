/** What the checks ask: the examples of the contract, small calculators more often than dear ones. */
import { operations } from '../../../src/http/operations.ts'
import type { Operation } from '../../../src/http/wire/operation.ts'
import { pick, seeded } from '../../../test/support/random-requests.ts'
import type { Ask } from './load.ts'

const ask = (path: string, request: unknown, accept?: string): Ask => ({
  path,
  body: JSON.stringify(request),
  ...(accept === undefined ? {} : { accept })
})

const asksOf = ({ path, examples, forms }: Operation): readonly Ask[] =>
  Object.values(examples).flatMap(({ request }) => [
    ask(path, request),
    ...forms.map(({ mediaType }) => ask(path, request, mediaType))
  ])

export const asksFor = (operationId: string): readonly Ask[] =>
  operations.filter(operation => operation.operationId === operationId).flatMap(asksOf)

const light = operations.filter(({ heavy }) => heavy !== true).flatMap(asksOf)
const heavy = operations.filter(({ heavy }) => heavy === true).flatMap(asksOf)

/** @param heavyShare  of calls that go to a worker */
export function mixedAsks(seed: number, heavyShare: number): () => Ask {
  const random = seeded(seed)
  return () => pick(random, random() < heavyShare ? heavy : light)
}
