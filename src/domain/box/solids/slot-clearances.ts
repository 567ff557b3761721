/** Drivers beside a slot: motors and baskets against its plates. */
import type { Point3 } from '../../../contract/boxes/panel.ts'
import { insideDistance } from '../../../numeric/polygon-distance.ts'
import { profilePoint } from '../shell/face.ts'
import { unmirrored } from '../slot/slot-plane.ts'
import type { BuiltSlot } from '../slot/slot-port.ts'
import { type Clearance, clearanceRow, clearanceRules, rim } from './clearances.ts'
import type { MountedDriver } from './mounting.ts'

/** A basket only has to clear the plate. */
const basketRule = { needM: 5e-3, why: 'the basket must clear the plate of the slot' }

/** From a point to the body of the slot; negative inside it. */
function toSlot({ space, run, takenM3 }: BuiltSlot, point: Point3): number {
  const { placed, widthM, hasCheek, wallM } = space
  const { x, y, along } = profilePoint(placed.axis, point)
  const [from, to] = [placed.start, placed.start + widthM + (hasCheek ? wallM : 0)]
  const taken = run.taken.map(corner => unmirrored(placed, corner))
  const across = takenM3 > 0 ? -insideDistance(placed.isMirrored ? taken.toReversed() : taken, { x, y }) : 0
  const beside = Math.max(from - along, along - to)
  if (beside <= 0) return across
  return across <= 0 ? beside : Math.hypot(across, beside)
}

/** Two coaxial cylinders: the cut-out to half the depth, the motor from there on. */
export function slotClearances(slot: BuiltSlot, mounted: MountedDriver): readonly Clearance[] {
  const { driver, face, label } = mounted
  const { mountingDepthM: depth, magnetDiameterM, cutOutDiameterM = 0 } = driver
  if (depth === undefined || driver.mount === 'reversed') return []
  const nearest = (radiusM: number, depths: readonly number[]) =>
    Math.min(...depths.flatMap(each => rim(mounted, radiusM, each)).map(point => toSlot(slot, point)))
  const basket = nearest(cutOutDiameterM / 2, [face.thicknessM, depth / 2])
  const rows = [clearanceRow(`${label}: basket to the plates of the slot`, basket, basketRule)]
  if (magnetDiameterM === undefined) return rows
  const motor = nearest(magnetDiameterM / 2, [depth / 2, depth])
  return [...rows, clearanceRow(`${label}: motor to the plates of the slot`, motor, clearanceRules.motorToTube)]
}
