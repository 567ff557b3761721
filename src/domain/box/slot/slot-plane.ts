/** In which plane of the box a slot runs, and how that plane lies in the box. */

import type { SlotPort } from '../../../contract/boxes/box-hardware.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { bounds, edgeLine, type Line, type Point2, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'
import type { Inside } from '../shell/face.ts'
import { clearLength, type Shell, wallDepth, wallOf } from '../shell/shell.ts'
import type { SlotPlane } from './slot-path.ts'

export interface PlacedPlane {
  readonly plane: SlotPlane
  /** Axis along which the slot has its width. */
  readonly axis: Shell['axis']
  /** Where the clear width starts, and its length. */
  readonly start: number
  readonly clear: number
  readonly isMirrored: boolean
  /** The inner outline as it lies in the box. */
  readonly outline: Polygon
}

/** A point of the plane as it lies in the box. */
export const unmirrored = ({ isMirrored }: PlacedPlane, { x, y }: Point2): Point2 =>
  isMirrored ? { x: -x, y } : { x, y }

/** The wall line in the box for an edge of the plane. */
export function wallLine({ outline, isMirrored }: PlacedPlane, edge: number): Line {
  const n = outline.length
  return edgeLine(outline, isMirrored ? 2 * n - 2 - (edge % n) : edge)
}

const along = (slot: SlotPort) => slot.along ?? 'bottom'

function placed(
  outline: Polygon,
  front: number,
  frontM: number,
  onward: boolean,
  rest: Pick<PlacedPlane, 'axis' | 'start' | 'clear'>
) {
  const turned = onward ? { inner: outline, front } : mirrored(outline, front)
  return { plane: { ...turned, frontM }, isMirrored: !onward, outline, ...rest }
}

function refuse(detail: Said): DesignError {
  return new DesignError('conflicting-input', { field: 'port.along', detail })
}

/**
 * Floor or lid of an upright box: its profile. A side of a rectangular box: its plan. A wall of a prism: its footprint.
 *
 * @throws DesignError `conflicting-input` where the slot would have no even height or the joints leave no way for it
 */
export function slotPlane({ shell, inner }: Inside, slot: SlotPort): PlacedPlane {
  const wall = along(slot)
  const front = shell.walls.findIndex(({ role }) => role === 'front')
  const { recessM, ...board } = wallOf(shell, front)
  const frontM = wallDepth({ ...board, recessM }) - recessM
  const sideways = wall === 'left' || wall === 'right'
  const lying = { axis: shell.axis, start: shell.caps.low.thicknessM, clear: clearLength(shell) }
  if (shell.axis === 'z') {
    if (!sideways) throw refuse(say('refused.in-a-prism-a-slot-runs'))
    return placed(inner, front, frontM, wall === 'right', lying)
  }
  if (!sideways) return placed(inner, front, frontM, wall === 'bottom', lying)
  const box = bounds(inner)
  const upright = inner.every(({ x }) => Math.abs(x - box.left) < 1e-9 || Math.abs(x - box.right) < 1e-9)
  if (!upright) throw refuse(say('refused.along-the-side-of-a-wedge'))
  if (shell.caps.placed === 'between') {
    throw refuse(say('refused.a-slot-along-a-side-splits'))
  }
  const [low, high] = [shell.caps.low.thicknessM, shell.lengthM - shell.caps.high.thicknessM]
  const plan = [
    { x: low, y: box.left },
    { x: high, y: box.left },
    { x: high, y: box.right },
    { x: low, y: box.right }
  ]
  return placed(plan, 0, frontM, wall === 'right', { axis: 'z', start: box.low, clear: box.height })
}
/** Turned over, so that a slot on the other side runs like this one. The front keeps its place in the list. */

function mirrored(inner: Polygon, front: number): { readonly inner: Polygon; readonly front: number } {
  const n = inner.length
  const points = inner.map(({ x, y }) => ({ x: -x, y })).toReversed()
  return { inner: points, front: (2 * n - 2 - (((front % n) + n) % n)) % n }
}
