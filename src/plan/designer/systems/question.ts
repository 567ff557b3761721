/** What a search is asked, with every silent field filled in and recorded. */
import type { DesignLimits, SearchRequest } from '../../../contract/systems/design-search.ts'
import { type DesignGoal, type DesignRanking, searchedKinds } from '../../../contract/systems/words.ts'
import type { Assumptions } from '../../../domain/assume.ts'
import { planDefaults } from '../../request/defaults.ts'
import { resolvedFields } from '../../request/resolved-plan.ts'
import { rankDefaults } from '../defaults.ts'
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

/** The box that serves what decides the order. */
const goalOf: Readonly<Partial<Record<DesignRanking, DesignGoal>>> = { level: 'loud', reach: 'low', box: 'small' }

/** @throws DesignError `missing-input` where price counts and one is missing, `conflicting-input` where nothing counts */
export function questionOf(request: SearchRequest, assumed: Assumptions): Question {
  const { limits = {} } = request
  const { driverCounts, kinds } = rankDefaults
  if (request.driverCounts === undefined) assumed.note('driverCounts', driverCounts.value.join(', '), driverCounts)
  if (request.kinds === undefined) assumed.note('kinds', searchedKinds.join(', '), kinds)
  const excursionOfXmax = assumed.take<number>(
    limits.excursionOfXmax,
    'limits.excursionOfXmax',
    rankDefaults.excursionOfXmax
  )
  resolvedFields({ ...request, signal: request.signal ?? {} }, assumed)
  const rankBy = assumed.take<DesignRanking>(request.rankBy, 'rankBy', rankDefaults.rankBy)
  return {
    limits: { ...limits, excursionOfXmax },
    weights: resolvedWeights(request, assumed),
    rankBy,
    goal: assumed.work(request.goal, 'goal', goalOf[rankBy] ?? planDefaults.goal.value, rankDefaults.goal),
    levelHz: assumed.take<number>(request.levelHz, 'levelHz', rankDefaults.levelHz),
    show: assumed.take<number>(request.show, 'show', rankDefaults.show)
  }
}
