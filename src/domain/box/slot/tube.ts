/** A tube: its wall, its part behind the panel, the air it takes. */

import type { RoundPort } from '../../../contract/boxes/box-hardware.ts'
import { DesignError } from '../../design-error.ts'
import { flareRingM3 } from '../../port/flare.ts'
import { say } from '../../say.ts'
import { boardsOf } from '../request/boards-of-face.ts'
import type { BoxTask } from '../request/box-task.ts'

/** Wall of a tube whose outer diameter is not given [m]. */
const TUBE_WALL_M = 3e-3

export const tubeOuter = ({ outerDiameterM, innerDiameterM }: RoundPort): number =>
  outerDiameterM ?? innerDiameterM + 2 * TUBE_WALL_M

/** Length of a tube behind the inner face of its panel. @throws DesignError unless exactly one length is given */
export function tubeInside({ lengthM, insideLengthM }: RoundPort, panelM: number): number {
  if ((lengthM === undefined) === (insideLengthM === undefined)) {
    throw new DesignError(lengthM === undefined ? 'missing-input' : 'conflicting-input', {
      field: 'port.lengthM',
      detail: say('refused.give-the-length-of-the-tube')
    })
  }
  return insideLengthM ?? Math.max(0, (lengthM ?? 0) - panelM)
}

/** Board of the face a tube stands in [m]. */
export const tubePanel = ({ fixed }: BoxTask, port: RoundPort): number => boardsOf(port, fixed)

/** What has to pass the panel: the tube, or its flare [m]. */
export const tubeWidest = (port: RoundPort): number => tubeOuter(port) + 2 * (port.flareRadiusM ?? 0)

/** Air that tubes take which reach so far behind their panel, whose outer flare may be longer than the panel is thick [m³]. */
export function tubeVolume(port: RoundPort, insideM: number, panelM: number): number {
  const outer = tubeOuter(port)
  const { flangeDiameterM = outer, flangeThicknessM = 0, flareRadiusM = 0, count = 1 } = port
  const flange = (Math.PI / 4) * Math.max(0, flangeDiameterM ** 2 - outer ** 2) * flangeThicknessM
  const ring = (lengthM: number) => flareRingM3(outer / 2, flareRadiusM, Math.min(lengthM, insideM))
  return count * ((Math.PI / 4) * outer ** 2 * insideM + flange + ring(flareRadiusM) + ring(flareRadiusM - panelM))
}
