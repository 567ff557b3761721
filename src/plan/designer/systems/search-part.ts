/** One part of a search: its drivers with every amplifier foreseen, the first of them built, and all that a join needs. */
import type { SearchPart, TriedSystem } from '../../../contract/systems/design-part.ts'
import type { SearchRequest, SearchTurn } from '../../../contract/systems/design-search.ts'
import type { RejectedDesign } from '../../../contract/systems/design-system.ts'
import { rejectionRules } from '../../../contract/systems/words.ts'
import type { Caution } from '../../../domain/caution.ts'
import { present } from '../../../domain/present.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'
import { combinationsOf, driversOf } from '../search-combinations.ts'
import { builtSystem } from './build-system.ts'
import { systemDefaults } from './defaults.ts'
import { fingerprintOf } from './fingerprint.ts'
import { type Foresight, foresight, type Standing } from './foresee.ts'
import { numberedCautions } from './part-cautions.ts'
import type { Question } from './question.ts'
import { comesAfter, ranked, systemOf, turnOf } from './rank.ts'
import { firstRejected } from './rejected.ts'
import { nearest, relaxationOf } from './relax.ts'
import { unbeaten } from './unbeaten.ts'

export const mostBuilt = ({ show }: Question): number => show + systemDefaults.spareBuilds.value

/** Builds the best in turn until as many stand as are shown, here or in other parts. */
function tried(
  request: SearchRequest,
  question: Question,
  standing: readonly Standing[],
  until: SearchTurn | undefined
) {
  const systems: { readonly system: TriedSystem; readonly cautions: readonly Caution[] }[] = []
  let designs = 0
  for (const each of ranked(standing, question, ({ figures }) => figures)) {
    if (designs >= question.show || systems.length >= mostBuilt(question)) break
    if (until !== undefined && comesAfter(turnOf(question, each.figures), until)) break
    const { found, rejection } = builtSystem(request, question, each)
    if (found !== undefined) designs++
    const made = found && { enclosure: found.enclosure, figures: found.figures }
    const names = systemOf(each)
    const rejected = rejection && { ...names, ...rejection, figures: each.figures }
    const system = { ...names, foreseen: each.figures, ...made, ...present({ rejection: rejected }), cautions: [] }
    systems.push({ system: sixDigitsThroughout(system), cautions: found?.cautions ?? [] })
  }
  return systems
}

const countsOf = (rejected: readonly RejectedDesign[]) =>
  rejectionRules.flatMap(rule => {
    const count = rejected.filter(each => each.rule === rule).length
    return count === 0 ? [] : [{ rule, count }]
  })

export type Shard = NonNullable<SearchRequest['shard']>

export function searchPart(request: SearchRequest, question: Question, { until, ...shard }: Shard): SearchPart {
  const drivers = driversOf(request, shard)
  const all: readonly Foresight[] = drivers.flatMap(driver =>
    [...combinationsOf(request, driver, question.goal)].flatMap(foresight(request, question))
  )
  const standing = all.flatMap(each => (each.standing === undefined ? [] : [each.standing]))
  const rejected = all.flatMap(each => (each.rejected === undefined ? [] : [each.rejected]))
  const near = standing.length > 0 ? [] : nearest(request, question, drivers)
  return {
    shard,
    fingerprint: fingerprintOf(request),
    weighed: all.length,
    standing: standing.length,
    dropped: countsOf(rejected),
    ...numberedCautions(tried(request, question, standing, until)),
    unbeaten: unbeaten(standing),
    rejected: firstRejected(rejected, question),
    relaxations: near.map(each => ({
      ...systemOf(each),
      foreseen: each.figures,
      beyond: each.beyond,
      ...present({ found: relaxationOf(request, question, each) })
    }))
  }
}
