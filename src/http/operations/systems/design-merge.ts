/** POST /v1/designs/merge */
import { MergeBody } from '../../../contract/systems/design-part.ts'
import { SearchResultBody } from '../../../contract/systems/design-result.ts'
import { SearchBody } from '../../../contract/systems/design-search.ts'
import { mergeDesigns as compute } from '../../../plan/designer/shelf/search-designs.ts'
import { defineOperation } from '../../wire/operation.ts'
import { searchDesigns } from './design-search.ts'
import { hatchbackSearch } from './design-search-examples.ts'
import { mergeLaws } from './system-laws.ts'

const request = {
  ...hatchbackSearch,
  drivers: hatchbackSearch.drivers.slice(2),
  amplifiers: hatchbackSearch.amplifiers.slice(1),
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
    'Joins what several calls of /v1/designs/search with `shard` answered (`result.part`) to the answer that one call without `shard` gives, to the last digit; drivers are dealt out by name, so that any machine can work on any part. Parts of another request, missing or given twice are refused. Nothing is built again.',
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
      summary: 'Two calls joined; with a single driver the second had nothing to weigh',
      /** Worked out when first read: parts hold figures, which would age here. */
      get request() {
        parts ??= [partOf(0, 2), partOf(1, 2)]
        return { request, parts }
      }
    }
  }
})
