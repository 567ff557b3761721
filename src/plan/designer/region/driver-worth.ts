/** What a driver is worth: the score of its best box on the nodes where a search looks first. */
import type { PlacedBox } from '../room/box-room.ts'
import { searchDefaults } from '../search/defaults.ts'
import type { DesignProblem } from '../search/design-problem.ts'
import { mostOf } from '../search/most-score.ts'
import { grid } from '../search/search-boxes.ts'
import { designScale } from '../search/weigh-design.ts'

/** @returns -Infinity where no box stands; nodes are weighed in the order of what they cannot pass, until none can win */
export function driverWorth(problem: DesignProblem<PlacedBox>): number {
  const [most, scale] = [mostOf(problem), designScale(problem)]
  const nodes = grid(problem).flatMap(({ kind, volume, tuning }) => {
    const [netVolumeM3, tuningHz] = [Math.exp(volume), kind === 'closed' ? undefined : Math.exp(tuning)]
    const bound = most(netVolumeM3, tuningHz)
    return bound === undefined ? [] : [{ netVolumeM3, tuningHz, most: bound.most }]
  })
  let best = -Infinity
  for (const { netVolumeM3, tuningHz, most: bound } of nodes.toSorted((a, b) => b.most - a.most)) {
    if (bound + searchDefaults.boundSlackDb.value <= best) break
    const design = tuningHz === undefined ? scale.closed(netVolumeM3) : scale.vented(netVolumeM3, tuningHz)
    if (design !== undefined && design.score > best) best = design.score
  }
  return best
}
