/** POST /v1/designs/merge */
import { MergeBody } from '../../../contract/systems/design-part.ts'
import { SearchResultBody } from '../../../contract/systems/design-result.ts'
import { SearchBody } from '../../../contract/systems/design-search.ts'
import { mergeDesigns as compute } from '../../../plan/designer/systems/search-designs.ts'
import { defineOperation } from '../../wire/operation.ts'
import { searchDesigns } from './design-search.ts'
import { hatchbackSearch } from './design-search-examples.ts'
import { mergeLaws } from './system-laws.ts'

const request = {
  ...hatchbackSearch,
  drivers: hatchbackSearch.drivers.slice(2),
  amplifiers: hatchbackSearch.amplifiers.slice(1),
  limits: { pricePerSystem: 350 },
  show: 1
}

const partOf = (index: number, of: number) => {
  const text = searchDesigns.answerText({ ...request, shard: { index, of } }, { digits: 'six', basis: false })
  return JSON.parse(text).result.part
}

let parts: readonly unknown[] | undefined

export const mergeDesigns = defineOperation({
  path: '/v1/designs/merge',
  operationId: 'mergeDesigns',
  tag: 'Plans',
  summary: 'The parts of a split search as one answer',
  description:
    'Joins what calls of /v1/designs/search with `shard` answered (`result.part`) to the very answer of one call without it. Drivers are dealt out by name, so that any machine can work on any part. Nothing is built again.',
  body: MergeBody,
  result: SearchResultBody,
  answersFor: {
    operationId: searchDesigns.operationId,
    body: SearchBody,
    request: ({ request: { shard: _, ...search } }) => search
  },
  costMs: ({ parts: given }) => 4 + 2 * given.length,
  laws: mergeLaws,
  compute,
  heavy: true,
  bodyLimits: 8,
  examples: {
    'two-parts': {
      summary: 'Two calls joined that left nothing: what gives way the least',
      /** Worked out when first read: parts hold figures, which would age here. */
      get request() {
        parts ??= [partOf(0, 2), partOf(1, 2)]
        return { request, parts }
      }
    }
  }
})
