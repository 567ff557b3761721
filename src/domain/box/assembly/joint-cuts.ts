/** How deep and how wide joints are cut, and where along a touch. */
import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { PanelMark } from '../../../contract/boxes/panel.ts'

/** A stretch of a touch by its shares, and whether a finger of the board that stands there passes it. */
export interface Finger {
  readonly from: number
  readonly to: number
  readonly isTongue: boolean
}

/** Share of the board that a joint is sunk by: one setting of the router for all, and what is left bears the screws. Common practice, no source. */
const DEPTH_SHARE = 1 / 3

/**
 * Depth of a groove or a rebate, on the step of the saw.
 *
 *   d = t/3
 *
 * @source common practice, no source
 * @check  18 mm → 6 mm
 */
export const jointDepthM = (thicknessM: number, stepM: number): number =>
  Math.max(1, Math.round((thicknessM * DEPTH_SHARE) / stepM)) * stepM

/** A finger is no narrower than this many boards are thick: narrower ones break off in board. Common practice, no source. */
const FINGER_THICKNESSES = 2

/**
 * Fingers along a joint of length L in boards of thickness t: an odd number, so that the board that runs past has both ends.
 *
 *   n = largest odd number with L/n ≥ 2·t
 *
 * @returns none where fewer than three fit
 * @source common practice, no source
 * @check  364 mm of 18 mm → 9 of 40.4 mm
 */
export function fingersAlong(lengthM: number, thicknessM: number): readonly Finger[] {
  const most = Math.floor(lengthM / (FINGER_THICKNESSES * thicknessM) + 1e-9)
  const count = most % 2 === 1 ? most : most - 1
  if (count < 3) return []
  return Array.from({ length: count }, (_, i) => ({ from: i / count, to: (i + 1) / count, isTongue: i % 2 === 1 }))
}

export interface Rectangle {
  readonly uM: number
  readonly vM: number
  readonly widthM: number
  readonly heightM: number
}

const between = (a: PanelPoint, b: PanelPoint): Rectangle => ({
  uM: (a.uM + b.uM) / 2,
  vM: (a.vM + b.vM) / 2,
  widthM: Math.abs(b.uM - a.uM),
  heightM: Math.abs(b.vM - a.vM)
})

/** Along an axis of the board: what is cut aslant no rectangle holds. */
export const isStraight = ({ from, to }: Pick<PanelMark, 'from' | 'to'>): boolean =>
  Math.abs(from.uM - to.uM) < 1e-7 || Math.abs(from.vM - to.vM) < 1e-7

/** A stretch of a strip by its shares, longer at its ends by so much. */
export function stretchOf(
  { from, to, widthM }: Pick<PanelMark, 'from' | 'to' | 'widthM'>,
  [start, end]: readonly [number, number],
  [before, behind]: readonly [number, number]
): Rectangle {
  const [du, dv] = [to.uM - from.uM, to.vM - from.vM]
  const length = Math.hypot(du, dv)
  const at = (along: number, across: number): PanelPoint => ({
    uM: from.uM + (du * along - dv * across) / length,
    vM: from.vM + (dv * along + du * across) / length
  })
  return between(at(start * length - before, -widthM / 2), at(end * length + behind, widthM / 2))
}

/** The common part of two rectangles; none where they do not meet. */
export function commonPart(one: Rectangle, other: Rectangle): Rectangle | undefined {
  const span = (a: number, b: number, c: number, d: number) => [
    Math.max(a - b / 2, c - d / 2),
    Math.min(a + b / 2, c + d / 2)
  ]
  const [left = 0, right = 0] = span(one.uM, one.widthM, other.uM, other.widthM)
  const [low = 0, high = 0] = span(one.vM, one.heightM, other.vM, other.heightM)
  if (right - left < 1e-7 || high - low < 1e-7) return undefined
  return between({ uM: left, vM: low }, { uM: right, vM: high })
}
