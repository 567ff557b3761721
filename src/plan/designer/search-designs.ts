/** POST /v1/designs/search: every system that can be built of what is at hand, in order, and why the others were dropped. */
import type { SourceId } from '../../contract/sources/source.ts'
import type { SearchRequest } from '../../contract/systems/design-search.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlannedKind } from '../../contract/systems/words.ts'
import { type RejectionRule, rejectionRules } from '../../contract/systems/words.ts'
import { type Assumptions, assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import type { Outcome } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { rememberingParts } from '../request/part.ts'
import { resolvedFields } from '../request/resolved-plan.ts'
import { scoreBasis } from './score-basis.ts'
import { type Combination, combinations, kindsOf, USUAL_COUNTS } from './search-combinations.ts'
import { type Electrics, electrics } from './search-electrics.ts'
import { type BuiltDesign, builtDesigns } from './search-enclosure.ts'
import type { DesignFigures } from './search-figures.ts'
import { broken, type LimitReading, overshoot, readLimits } from './search-limits.ts'
import { type Rejection, rejectionBy } from './search-rejection.ts'
import type { DesignLimits } from './search-request.ts'
import { pointsOf, type Score, type Weights } from './search-score.ts'
import { resolvedWeights } from './search-weights.ts'

interface System {
  readonly driver: string
  readonly driverCount: number
  readonly amplifier: string
  readonly kind: PlannedKind
}

interface Design extends System {
  readonly rank: number
  readonly alignment: string
  readonly score: number
  readonly points: Score['points']
  readonly figures: DesignFigures
  /** The limit with the least to spare. */
  readonly tightest?: LimitReading
  readonly cautions: readonly Caution[]
  readonly plan: PlanRequest
}

interface RejectedSystem extends System, Rejection {
  /** Of the alignment that came nearest. */
  readonly figures?: DesignFigures
}

interface DesignSearch {
  readonly weighed: number
  readonly rankedCount: number
  readonly rejectedCount: number
  readonly levelHz: number
  readonly weights: Weights
  readonly designs: readonly Design[]
  readonly rejected: readonly RejectedSystem[]
  readonly rejectedBy: readonly { readonly rule: RejectionRule; readonly count: number }[]
}

/** Where the level is compared, where the caller does not say. Common practice, no source. */
const LEVEL_HZ = 40
const SHOWN_DESIGNS = 10

interface Question {
  readonly limits: DesignLimits
  readonly weights: Weights
  readonly levelHz: number
}

type Unranked = Omit<Design, 'rank'>
type Verdict =
  | { readonly design: Unranked; readonly rejected?: undefined }
  | { readonly design?: undefined; readonly rejected: RejectedSystem }

function designOf(system: System, built: BuiltDesign, plan: PlanRequest, { limits, weights }: Question): Unranked {
  const { total, points } = pointsOf(built.figures, weights)
  const readings = readLimits(limits, built.figures).toSorted((a, b) => overshoot(b) - overshoot(a))
  return {
    ...system,
    alignment: built.alignment,
    score: total,
    points,
    figures: built.figures,
    ...present({ tightest: readings[0] }),
    cautions: built.cautions,
    plan: { ...plan, name: `${plan.name}, ${system.kind}`, enclosure: built.enclosure }
  }
}

const worstOf = (readings: readonly LimitReading[]) => Math.max(...readings.map(overshoot))

/** The best alignment that keeps every limit; where none does, the one that breaks them least. */
function boxed(system: System, found: Electrics, plan: PlanRequest, question: Question): Verdict {
  const all = builtDesigns(found, system.kind, question.levelHz)
  const built = all.flatMap(each => (each.found === undefined ? [] : [each.found]))
  const judged = built.map(each => ({ each, breaks: broken(readLimits(question.limits, each.figures)) }))
  const kept = judged
    .filter(({ breaks }) => breaks.length === 0)
    .map(({ each }) => designOf(system, each, plan, question))
  const [design] = kept.toSorted(inOrder)
  if (design !== undefined) return { design }
  const [nearest] = judged.toSorted((a, b) => worstOf(a.breaks) - worstOf(b.breaks))
  if (nearest !== undefined) {
    const rejection = rejectionBy(nearest.breaks) as Rejection
    return { rejected: { ...system, ...rejection, figures: nearest.each.figures } }
  }
  const [first] = all.flatMap(each => (each.rejection === undefined ? [] : [each.rejection]))
  return { rejected: { ...system, ...(first as Rejection) } }
}

function weighed(combination: Combination, kinds: readonly PlannedKind[], question: Question): readonly Verdict[] {
  const { driver, driverCount, amplifier, plan, price } = combination
  const systems = kinds.map(kind => ({ driver: driver.name, driverCount, amplifier: amplifier.name, kind }))
  const all = (rejection: Rejection) => systems.map(system => ({ rejected: { ...system, ...rejection } }))
  const tooDear = rejectionBy(broken(readLimits(question.limits, price === undefined ? {} : { price })))
  if (tooDear !== undefined) return all(tooDear)
  const { found, rejection } = electrics(combination)
  if (found === undefined) return all(rejection as Rejection)
  const thirsty = rejectionBy(broken(readLimits(question.limits, found.figures)))
  return thirsty === undefined ? systems.map(system => boxed(system, found, plan, question)) : all(thirsty)
}

const textOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)

/** By score; equals by what costs less, then by name, so that the order of the request never shows. */
function inOrder(a: Unranked, b: Unranked): number {
  return (
    b.score - a.score ||
    (a.figures.price ?? 0) - (b.figures.price ?? 0) ||
    a.figures.outerVolumeM3 - b.figures.outerVolumeM3 ||
    textOrder(a.plan.name ?? '', b.plan.name ?? '') ||
    b.figures.levelDb - a.figures.levelDb
  )
}

const rejectionOrder = (a: RejectedSystem, b: RejectedSystem) =>
  rejectionRules.indexOf(a.rule) - rejectionRules.indexOf(b.rule)

function questionOf(request: SearchRequest, assumed: Assumptions): Question {
  const { limits = {} } = request
  const counts = USUAL_COUNTS.join(', ')
  if (request.driverCounts === undefined) assumed.or(undefined, 'driverCounts', counts, 'one driver and a pair')
  if (request.kinds === undefined) assumed.or(undefined, 'kinds', 'closed, vented', 'the kinds a plan builds')
  const excursionOfXmax = assumed.or(
    limits.excursionOfXmax,
    'limits.excursionOfXmax',
    1,
    'no cone is driven beyond its rated excursion'
  )
  resolvedFields({ ...request, signal: request.signal ?? {} }, assumed)
  const usual = 'where the weight of a bass line lies (common practice, no source)'
  return {
    limits: { ...limits, excursionOfXmax },
    weights: resolvedWeights(request, assumed),
    levelHz: assumed.or(request.levelHz, 'levelHz', LEVEL_HZ, usual)
  }
}

const sameAs = (one: Caution) => (other: Caution) => one.code === other.code && one.message === other.message

/** What holds for every design shown is said once, of the whole answer. */
function sharedCautions(designs: readonly Design[]): readonly Caution[] {
  const [first, ...others] = designs
  if (first !== undefined) {
    return first.cautions.filter(each => others.every(({ cautions }) => cautions.some(sameAs(each))))
  }
  const meaning = say('no-design-found')
  return [caution('no-design-found', meaning)]
}

function withoutShared(design: Design, shared: readonly Caution[]): Design {
  return { ...design, cautions: design.cautions.filter(each => !shared.some(sameAs(each))) }
}

const sources: readonly SourceId[] = [
  'design-score',
  'small-1972-closed-box',
  'equal-power-practice',
  'practice-enclosure-choice',
  'acoustic-network',
  'linear-limits',
  'box-geometry',
  'class-efficiency'
]

/**
 * @throws DesignError `out-of-range` for more combinations than one call weighs, `missing-input`, `conflicting-input`
 * @validity that of the plan: first alignments that suit, the quietest port that fits; an order of preference, no optimum
 */
export function searchDesigns(request: SearchRequest): Outcome<DesignSearch> {
  const assumed = assumptions()
  const question = questionOf(request, assumed)
  const kinds = kindsOf(request)
  const verdicts = combinations(request).flatMap(group =>
    rememberingParts(() => group.flatMap(combination => weighed(combination, kinds, question)))
  )
  const show = assumed.or(request.show, 'show', SHOWN_DESIGNS, 'the first ten of each list')
  const ranked = verdicts.flatMap(({ design }) => (design === undefined ? [] : [design])).toSorted(inOrder)
  const rejected = verdicts.flatMap(({ rejected: each }) => (each === undefined ? [] : [each])).toSorted(rejectionOrder)
  const designs = ranked.slice(0, show).map((design, index) => ({ rank: index + 1, ...design }))
  const shared = sharedCautions(designs)
  return {
    result: {
      weighed: verdicts.length,
      rankedCount: ranked.length,
      rejectedCount: rejected.length,
      levelHz: question.levelHz,
      weights: question.weights,
      designs: designs.map(design => withoutShared(design, shared)),
      rejected: rejected.slice(0, show),
      rejectedBy: rejectionRules.flatMap(rule => {
        const count = rejected.filter(each => each.rule === rule).length
        return count === 0 ? [] : [{ rule, count }]
      })
    },
    cautions: shared,
    assumed: assumed.list,
    sources,
    basis: designs.map(({ figures, score }, index) =>
      scoreBasis(`designs[${index}].score`, figures, question.weights, score)
    )
  }
}
