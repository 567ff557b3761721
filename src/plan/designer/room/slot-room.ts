/** Room for a slot along the floor or up a side, straight or folded once along the back. */
import type { Ranges } from '../../../domain/box/boot/size-limits.ts'
import { LEAST_OVER_SLOT_M } from '../../../domain/box/slot/slot-port.ts'
import { clearanceRules } from '../../../domain/box/solids/clearances.ts'
import { mitreExtraM } from '../../../domain/port/bends.ts'
import type { BoxFacts } from './box-facts.ts'
import { innerDepthM, type Sides } from './box-sides.ts'
import { roomDefaults } from './defaults.ts'
import type { SlotOfArea } from './ports-of-area.ts'

/** Along the floor it is folded up the back, along a side it is folded along the back. */
export type SlotSide = 'bottom' | 'right'

/** A wedge has no even side. */
export const slotSides = ({ leanRad }: BoxFacts): readonly SlotSide[] =>
  leanRad > 0 ? ['bottom'] : ['bottom', 'right']

/** Axis in which the slot stands, and the one along which its cheek closes it. */
const axesOf = { bottom: { stands: 'height', along: 'width' }, right: { stands: 'width', along: 'height' } } as const

/** A folded slot and its plates, for most lengths; what the fold saves is left to the layout. */
export const slotTakesM3 = ({ boardM, frontM }: BoxFacts, { heightM, widthM }: SlotOfArea, lengthM: number): number =>
  (heightM + boardM) * (widthM + boardM) * Math.max(0, lengthM + mitreExtraM(heightM) - frontM)

/** Sizes as the layout counts them with this slot: it grows the box from there, and looks afterwards whether the drivers stand beside. */
export function withSlot({ boardM }: BoxFacts, side: SlotSide, heightM: number, ranges: Ranges): Ranges {
  const { stands } = axesOf[side]
  const { min, max } = ranges[stands]
  return { ...ranges, [stands]: { min: Math.max(min, heightM + 3 * boardM + LEAST_OVER_SLOT_M), max } }
}

/** The drivers stand beside the slot and its plate, and its cheek inside the box. */
export function standsBeside(
  { boardM }: BoxFacts,
  side: SlotSide,
  { heightM, widthM }: SlotOfArea,
  sides: Sides,
  bare: Ranges
): boolean {
  const { stands, along } = axesOf[side]
  return sides[stands] >= bare[stands].min + heightM + boardM && sides[along] >= widthM + 3 * boardM
}

interface Slot extends SlotOfArea {
  /** Along its centre line, without what a bend cuts off. */
  readonly lengthM: number
}

/** Half a height, or the plate of the leg before: the least of a leg behind its bend. */
const shortestLeg = ({ heightM }: Slot, boardM: number) => Math.max(heightM / 2, boardM + 1e-3)

/** Whether straight or folded the slot ends a height before the wall it faces, clear of the motor. */
export function standsSlot(facts: BoxFacts, side: SlotSide, slot: Slot, sides: Sides, rows: number): boolean {
  const { boardM, frontM, leanRad } = facts
  const { heightM, lengthM } = slot
  const atFloor = innerDepthM(facts, sides) + (sides.height / 2) * Math.tan(leanRad)
  if (lengthM <= frontM + atFloor - heightM) return true
  const folded = lengthM + mitreExtraM(heightM)
  const back = (sides[axesOf[side].stands] - 2 * boardM) / Math.cos(leanRad)
  const behind = folded - (frontM + atFloor - heightM / 2)
  if (behind < heightM / 2 + shortestLeg(slot, boardM)) return false
  if (behind > back - roomDefaults.lastLegHeights.value * heightM) return false
  return clearsMotor(facts, slot, { back, behind, atFloor }, rows)
}

interface Fold {
  /** Clear length of the back along the fold, and how far the slot goes along it. */
  readonly back: number
  readonly behind: number
  readonly atFloor: number
}

/** Where the last leg reaches behind the motor, the motor needs its depth before it. */
function clearsMotor(facts: BoxFacts, { heightM }: Slot, { back, behind, atFloor }: Fold, rows: number): boolean {
  const { boardM, frontM, motorDepthM, motorRadiusM } = facts
  const { needM } = clearanceRules.motorToSide
  const taken = heightM + boardM
  const middle = taken + (back - taken) / (2 * rows)
  const reach = behind + heightM / 2
  return (
    reach <= middle - motorRadiusM - needM - roomDefaults.spareM.value ||
    frontM + atFloor - taken >= motorDepthM + roomDefaults.spareM.value
  )
}
