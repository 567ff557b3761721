/** POST /v1/designs/search */
import type { Static } from 'typebox'
import { SearchBody, SearchResultBody } from '../../../contract/systems/design-search.ts'
import { MOST_WEIGHED, plannedKinds } from '../../../contract/systems/words.ts'
import { USUAL_COUNTS } from '../../../plan/designer/search-combinations.ts'
import { searchDesigns as compute } from '../../../plan/designer/search-designs.ts'
import { defineOperation } from '../../wire/operation.ts'
import { estateSearch, hatchbackSearch } from './design-search-examples.ts'
import { searchLaws } from './system-laws.ts'

const SYSTEM_MS = 60

/** Every system is built. Fitted to measurement, see scripts/bench/cost.ts. */
function searchCostMs({ drivers, driverCounts, amplifiers, kinds }: Static<typeof SearchBody>): number {
  const { length: counts } = driverCounts ?? USUAL_COUNTS
  return SYSTEM_MS * drivers.length * counts * amplifiers.length * (kinds ?? plannedKinds).length
}

export const searchDesigns = defineOperation({
  path: '/v1/designs/search',
  operationId: 'searchDesigns',
  tag: 'Plans',
  summary: 'The best systems from what is on the shelf',
  description: `Puts every driver, in every count, on every amplifier, into every kind of box, as a plan would build it, and drops what breaks a limit or cannot be built. What is left is ranked by a weighted sum of figures in decibels of equal worth; the weights are a judgement, echoed and open to change. Each design carries the request with which /v1/plans plans exactly it; each rejection says which limit it breaks and by how much. Of the alignments that suit, the best that keeps every limit stands for its system, with the quietest port that fits; sheets and the order of work are left to the plan. At most ${MOST_WEIGHED} systems a call.`,
  body: SearchBody,
  result: SearchResultBody,
  costMs: searchCostMs,
  laws: searchLaws,
  compute,
  heavy: true,
  examples: {
    estate: { summary: 'Two drivers and two amplifiers for an estate car, 700 to spend', request: estateSearch },
    hatchback: { summary: 'The loudest small closed box', request: hatchbackSearch }
  }
})
