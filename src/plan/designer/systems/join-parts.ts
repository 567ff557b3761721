/** Parts of a search joined to the answer that one call over all drivers gives, to the last digit. */
import type { SearchPart, TriedSystem } from '../../../contract/systems/design-part.ts'
import type { Design } from '../../../contract/systems/design-result.ts'
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import type { RejectedDesign, SearchRelaxation } from '../../../contract/systems/design-system.ts'
import { rejectionRules } from '../../../contract/systems/words.ts'
import type { Caution } from '../../../domain/caution.ts'
import { present } from '../../../domain/present.ts'
import { overshoot, readLimits } from '../search-limits.ts'
import { pointsOf } from '../search-score.ts'
import { combinationNamed } from './build-system.ts'
import { systemDefaults } from './defaults.ts'
import { fromPart } from './part-cautions.ts'
import type { Question } from './question.ts'
import { byNames, ranked, type System, systemOf } from './rank.ts'
import { firstRejected } from './rejected.ts'
import { byNearness } from './relax.ts'
import { mostBuilt } from './search-part.ts'
import { unbeaten } from './unbeaten.ts'

type Warned = Omit<TriedSystem, 'cautions'> & { readonly cautions: readonly Caution[] }
type Built = Warned & Required<Pick<Warned, 'enclosure' | 'figures'>>

const isBuilt = (system: Warned): system is Built => system.enclosure !== undefined && system.figures !== undefined

/** What one call would have built: in turn of all parts, until as many stand as are shown. */
function builtInTurn(parts: readonly SearchPart[], question: Question): readonly Warned[] {
  const warned = parts.flatMap(({ tried, cautions }) => {
    const told = cautions.map(fromPart)
    return tried.map(each => ({ ...each, cautions: each.cautions.flatMap(place => told[place] ?? []) }))
  })
  const built: Warned[] = []
  let designs = 0
  for (const each of ranked(warned, question, ({ foreseen }) => foreseen)) {
    if (designs >= question.show || built.length >= mostBuilt(question)) break
    if (isBuilt(each)) designs++
    built.push(each)
  }
  return built
}

function designOf(request: SearchRequest, question: Question, built: Built, isUnbeaten: boolean): Omit<Design, 'rank'> {
  const { figures, enclosure, cautions } = built
  const { total, points } = pointsOf(figures, question.weights)
  const { plan } = combinationNamed(request, built, question)
  const [tightest] = readLimits(question.limits, figures).toSorted((a, b) => overshoot(b) - overshoot(a))
  return {
    ...systemOf(built),
    score: total,
    points,
    figures,
    unbeaten: isUnbeaten,
    ...present({ tightest }),
    cautions,
    plan: { ...plan, name: `${plan.name}, ${built.kind}`, enclosure }
  }
}

const nameOf = (system: System) => JSON.stringify(systemOf(system))

const sumOf = (parts: readonly SearchPart[], field: 'weighed' | 'standing') =>
  parts.reduce((sum, part) => sum + part[field], 0)

/** All rejections by reason: those foreseen, and those that were found while building. */
function rejectedBy(parts: readonly SearchPart[], built: readonly RejectedDesign[]) {
  return rejectionRules.flatMap(rule => {
    const foreseen = parts.flatMap(({ dropped }) => dropped.filter(each => each.rule === rule))
    const count = foreseen.reduce((sum, each) => sum + each.count, 0) + built.filter(each => each.rule === rule).length
    return count === 0 ? [] : [{ rule, count }]
  })
}

/** The least that has to give way, of what came nearest in all parts; only where nothing stands anywhere. */
function relaxation(parts: readonly SearchPart[]): SearchRelaxation | undefined {
  if (sumOf(parts, 'standing') > 0) return undefined
  const near = parts
    .flatMap(({ relaxations }) => relaxations)
    .toSorted(byNearness)
    .slice(0, systemDefaults.mostRelaxed.value)
  const found = near.flatMap(each => (each.found === undefined ? [] : [each.found]))
  const given = ({ gives }: SearchRelaxation) => Math.max(0, ...gives.map(overshoot))
  return found.toSorted((a, b) => given(a) - given(b) || byNames(a, b))[0]
}

export interface JoinedSearch {
  readonly weighed: number
  readonly rankedCount: number
  readonly rejectedCount: number
  readonly levelHz: number
  readonly goal: Question['goal']
  readonly weights: Question['weights']
  readonly designs: readonly Design[]
  readonly unbeatenCount: number
  readonly unbeaten: SearchPart['unbeaten']
  readonly rejected: readonly RejectedDesign[]
  readonly rejectedBy: SearchPart['dropped']
  readonly relaxation?: SearchRelaxation
}

/** @param parts  each once, in any order; all of this request */
export function joinParts(request: SearchRequest, question: Question, parts: readonly SearchPart[]): JoinedSearch {
  const built = builtInTurn(parts, question)
  const failed = built.flatMap(({ rejection }) => (rejection === undefined ? [] : [rejection]))
  const best = unbeaten(parts.flatMap(part => part.unbeaten))
  const names = new Set(best.map(nameOf))
  const made = built.filter(isBuilt).map(each => designOf(request, question, each, names.has(nameOf(each))))
  const designs = ranked(made, question, ({ figures }) => figures).map((design, index) => ({
    rank: index + 1,
    ...design
  }))
  const weighed = sumOf(parts, 'weighed')
  const rankedCount = sumOf(parts, 'standing') - failed.length
  return {
    weighed,
    rankedCount,
    rejectedCount: weighed - rankedCount,
    levelHz: question.levelHz,
    goal: question.goal,
    weights: question.weights,
    designs,
    unbeatenCount: best.length,
    unbeaten: ranked(best, question, ({ figures }) => figures).slice(0, question.show),
    rejected: firstRejected([...parts.flatMap(({ rejected }) => rejected), ...failed], question),
    rejectedBy: rejectedBy(parts, failed),
    ...present({ relaxation: relaxation(parts) })
  }
}
