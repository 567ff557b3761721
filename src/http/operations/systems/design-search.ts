/** POST /v1/designs/search */
import { SearchResultBody } from '../../../contract/systems/design-result.ts'
import { SearchBody } from '../../../contract/systems/design-search.ts'
import { MOST_WEIGHED } from '../../../contract/systems/words.ts'
import { kindsOf } from '../../../plan/designer/search-combinations.ts'
import { searchDesigns as compute } from '../../../plan/designer/systems/search-designs.ts'
import { defineOperation } from '../../wire/operation.ts'
import { estateSearch, hatchbackSearch } from './design-search-examples.ts'
import { searchLaws } from './system-laws.ts'

export const searchDesigns = defineOperation({
  path: '/v1/designs/search',
  operationId: 'searchDesigns',
  tag: 'Plans',
  summary: 'The best systems from what is on the shelf',
  description: `Puts every driver, in every count, on every amplifier, into the box that a plan would choose for the goal, in closed form: up to ${MOST_WEIGHED} systems. What is foreseen to break a limit is dropped, with the first limit and the amount. The others are put in order, by the figure of \`rankBy\` or a weighted sum in decibels of equal worth. The first are laid out, braced and heard as a plan does it, until as many stand as are shown; each carries the request that plans it. \`unbeaten\` lists the systems of which no other is as good in every figure. Where limits leave nothing, \`relaxation\` says the least that gives way. \`shard\` searches one of several equal parts.`,
  body: SearchBody,
  result: SearchResultBody,
  costMs: ({ drivers, driverCounts = [1, 2], amplifiers, show = 10, shard, ...asked }) => {
    const own = drivers.length / (shard?.of ?? 1)
    const systems = own * driverCounts.length * amplifiers.length * kindsOf(asked).length
    return 20 * own + systems + 40 * Math.min(show, systems)
  },
  laws: searchLaws,
  compute,
  heavy: true,
  lines: true,
  examples: {
    estate: { summary: 'Two drivers and two amplifiers for an estate car, 700 to spend', request: estateSearch },
    hatchback: { summary: 'The loudest small closed box', request: hatchbackSearch }
  }
})
