/** Several equal runs side by side, each with a fuse of its own, where no single size fits. */

import type { CableChoiceRequest, ParallelRuns } from '../../../contract/supply/supply-cables.ts'
import { present } from '../../present.ts'
import { nextRating } from '../fuse/fuse-rating.ts'
import { supplyDefaults } from '../source/defaults.ts'
import { type Criteria, judgeSize } from './cable-candidate.ts'
import type { Circuit } from './cable-circuit.ts'

/** All runs end in one terminal. */
function terminalShare({ terminalAreaM2 }: Criteria, runs: number): Pick<Criteria, 'terminalAreaM2'> {
  return terminalAreaM2 === undefined ? {} : { terminalAreaM2: terminalAreaM2 / runs }
}

/**
 * Fewest equal runs that pass every limit, or as many as are asked for, each carrying its share.
 *
 * @returns undefined where even the most runs of the largest size fail
 * @validity Equal length, size and lugs; shares follow the resistances.
 * @source Ohm’s law; a fuse for each run: our rule
 */
export function parallelRuns(request: CableChoiceRequest, circuit: Circuit): ParallelRuns | undefined {
  const { task, criteria, lowestA, breaking } = circuit
  const { runs: asked = 1 } = request
  for (let runs = Math.max(2, asked); runs <= (asked > 1 ? asked : supplyDefaults.parallelRuns.value); runs++) {
    const fuse = nextRating(
      {
        systemVoltageV: request.systemVoltageV,
        breaking,
        lowestA: lowestA / runs,
        ...present({ types: request.fuseTypes })
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
      const { candidate } = judgeSize(share, size, { ...criteria, ...terminalShare(criteria, runs), fuse })
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
