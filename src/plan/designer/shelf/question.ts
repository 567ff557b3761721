/** What a search is asked, with every silent field filled in and recorded. */
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import type { DesignGoal, DesignRanking } from '../../../contract/systems/words.ts'
import type { Assumptions } from '../../../domain/assume.ts'
import { resolvedFields } from '../../request/resolved-plan.ts'
import { USUAL_COUNTS } from '../search-combinations.ts'
import type { DesignLimits } from '../search-request.ts'
import type { Weights } from '../search-score.ts'
import { resolvedWeights } from '../search-weights.ts'

export interface Question {
  readonly limits: DesignLimits
  readonly weights: Weights
  readonly rankBy: DesignRanking
  readonly goal: DesignGoal
  readonly levelHz: number
  /** Designs that are built and shown, and entries of every other list. */
  readonly show: number
}

/** Where the level is compared, where the caller does not say. Common practice, no source. */
const LEVEL_HZ = 40
const SHOWN_DESIGNS = 10

/** The box that serves what decides the order. */
const goalOf: Readonly<Partial<Record<DesignRanking, DesignGoal>>> = { level: 'loud', reach: 'low', box: 'small' }

/** @throws DesignError `missing-input` where price counts and one is missing, `conflicting-input` where nothing counts */
export function questionOf(request: SearchRequest, assumed: Assumptions): Question {
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
  const rankBy = assumed.or<DesignRanking>(request.rankBy, 'rankBy', 'balance', 'level, reach, box, price and current')
  const usual = 'where the weight of a bass line lies (common practice, no source)'
  return {
    limits: { ...limits, excursionOfXmax },
    weights: resolvedWeights(request, assumed),
    rankBy,
    goal: assumed.or(request.goal, 'goal', goalOf[rankBy] ?? 'everyday', 'the boxes that serve what decides the order'),
    levelHz: assumed.or(request.levelHz, 'levelHz', LEVEL_HZ, usual),
    show: assumed.or(request.show, 'show', SHOWN_DESIGNS, 'the first ten of each list')
  }
}
