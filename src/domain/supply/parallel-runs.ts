/** Several equal runs side by side, each with a fuse of its own, where no single size fits. */
import { nextRating } from '../fuse/fuse-rating.ts'
import { judgeSize } from './cable-candidate.ts'
import type { Circuit } from './cable-circuit.ts'
import type { CableChoiceRequest } from './cable-request.ts'
import { supplyJudgement } from './supply-judgement.ts'

export interface ParallelRuns {
  readonly runs: number
  readonly designation: string
  /** Of each run. */
  readonly fuseRatingA: number
  readonly currentA: number
  readonly ampacityA: number
  readonly dropV: number
}

/**
 * Fewest equal runs that pass every limit, each carrying its share.
 *
 * @returns undefined where even the most runs of the largest size fail
 * @validity Equal length, size and lugs; shares follow the resistances.
 * @source Ohm’s law; a fuse for each run: our rule
 */
export function parallelRuns(request: CableChoiceRequest, circuit: Circuit): ParallelRuns | undefined {
  const { task, yard, lowestA, prospectiveA } = circuit
  for (let runs = 2; runs <= supplyJudgement.parallelRuns; runs++) {
    const fuse = nextRating(
      {
        systemVoltageV: request.systemVoltageV,
        prospectiveA,
        lowestA: lowestA / runs,
        ...(request.fuseTypes === undefined ? {} : { types: request.fuseTypes })
      },
      'fuseTypes'
    )
    if (fuse === undefined) continue
    const share = {
      ...task,
      currentA: task.currentA / runs,
      loadPowerW: task.loadPowerW / runs,
      contactOhm: task.contactOhm * runs
    }
    for (const size of task.sizes) {
      const { candidate } = judgeSize(share, size, { ...yard, fuse })
      const { dropV, ampacityA, currentA } = candidate
      if (candidate.fails.length > 0 || dropV === undefined || currentA === undefined) continue
      return {
        runs,
        designation: size.designation,
        fuseRatingA: fuse.ratingA,
        currentA,
        ampacityA: ampacityA ?? 0,
        dropV
      }
    }
  }
  return undefined
}
