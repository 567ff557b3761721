/** A room that is asked for areas in steps, the next above, so that amplifiers and drivers ask for the same boxes. */
import type { Room } from '../search/design-problem.ts'
import type { PlacedBox } from './box-room.ts'

/** @param step  ratio of two areas, above 1 */
export function inSteps(room: Room<PlacedBox>, step: number): Room<PlacedBox> {
  const width = Math.log(step)
  const above = (areaM2: number) => Math.exp(Math.ceil(Math.log(areaM2) / width - 1e-9) * width)
  return { ...room, ported: (netM3, tuningHz, areaM2) => room.ported(netM3, tuningHz, above(areaM2)) }
}
