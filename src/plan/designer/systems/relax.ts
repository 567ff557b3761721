/** Where limits leave nothing: which of them would have to give way the least, found by building what comes nearest. */
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import type { SearchRelaxation } from '../../../contract/systems/design-system.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'
import { combinationsOf } from '../search-combinations.ts'
import { broken, givenWay, readLimits } from '../search-limits.ts'
import type { SearchDriver } from '../search-request.ts'
import { builtSystem } from './build-system.ts'
import { systemDefaults } from './defaults.ts'
import { foreseenBreaks, foresight, type Standing, worst } from './foresee.ts'
import type { Question } from './question.ts'
import { byNames, type System, systemOf } from './rank.ts'

interface Near extends Standing {
  /** Beyond the limit it breaks most, as a share. */
  readonly beyond: number
}

type Beyond = System & Pick<Near, 'beyond'>

export const byNearness = (a: Beyond, b: Beyond): number => a.beyond - b.beyond || byNames(a, b)

/** Each system with the box that breaks the limits least, the nearest first. */
export function nearest(request: SearchRequest, question: Question, drivers: readonly SearchDriver[]): readonly Near[] {
  const all = drivers.flatMap(driver =>
    [...combinationsOf(request, driver, question.goal)].flatMap(foresight(request, question, true))
  )
  return all
    .flatMap(({ standing }) => (standing === undefined ? [] : [standing]))
    .map(each => sixDigitsThroughout({ ...each, beyond: worst(foreseenBreaks(question.limits, each.figures)) }))
    .toSorted(byNearness)
    .slice(0, systemDefaults.mostRelaxed.value)
}

/** @returns what must give way for this system, as it was built; none where it cannot be built */
export function relaxationOf(request: SearchRequest, question: Question, near: Standing): SearchRelaxation | undefined {
  const { outerVolumeM3: mostM3 = Infinity } = question.limits
  const limits = {
    outerVolumeM3: Math.max(mostM3, near.figures.outerVolumeM3 * (1 + systemDefaults.foreseenSlack.value))
  }
  const { found } = builtSystem(request, { ...question, limits }, near)
  if (found === undefined) return undefined
  const gives = broken(readLimits(question.limits, found.figures))
  return sixDigitsThroughout({
    ...systemOf(near),
    figures: found.figures,
    gives,
    patch: { limits: givenWay(gives) }
  })
}
