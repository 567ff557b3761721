/** POST /v1/designs/search */
import { SearchResultBody } from '../../../contract/systems/design-result.ts'
import { SearchBody } from '../../../contract/systems/design-search.ts'
import { MOST_WEIGHED } from '../../../contract/systems/words.ts'
import { searchDesigns as compute } from '../../../plan/designer/search-designs.ts'
import { defineOperation } from '../../wire/operation.ts'
import { estateSearch, hatchbackSearch } from './design-search-examples.ts'
import { searchLaws } from './system-laws.ts'

export const searchDesigns = defineOperation({
  path: '/v1/designs/search',
  operationId: 'searchDesigns',
  tag: 'Plans',
  summary: 'The best systems from what is on the shelf',
  description: `Puts every driver, in every count, on every amplifier, into every kind of box, as a plan would build it, and drops what breaks a limit or cannot be built. What is left is ranked by a weighted sum of figures in decibels of equal worth; the weights are a judgement, echoed and open to change. Each design carries the request with which /v1/plans plans exactly it; each rejection says which limit it breaks and by how much. Of the alignments that suit, the best that keeps every limit stands for its system, with the quietest port that fits; sheets and the order of work are left to the plan. At most ${MOST_WEIGHED} systems a call.`,
  body: SearchBody,
  result: SearchResultBody,
  costMs: () => 4_000,
  laws: searchLaws,
  compute,
  heavy: true,
  examples: {
    estate: { summary: 'Two drivers and two amplifiers for an estate car, 700 to spend', request: estateSearch },
    hatchback: { summary: 'The loudest small closed box', request: hatchbackSearch }
  }
})
