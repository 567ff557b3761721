/** What a round cutter leaves of inside corners: arcs as wide as it is, or relief past the corner where something square goes in. */
import type { CutOut } from '../../contract/boxes/panel.ts'
import type { Polygon } from '../../numeric/geometry/polygon.ts'
import type { DxfPoint } from '../draw/dxf.ts'

/** How inside corners are drawn for a cutter. */
export interface Cutter {
  /** [mm] */
  readonly radius: number
  /** Whether corners that take something square are relieved. */
  readonly dogBones: boolean
}

/** Drawn wider than the cutter by this, or some programs find no way into the arc. Common practice, no source: 0 to 0.2 mm. */
const EASE_M = 1e-4

export const arcRadiusM = (cutterM: number): number => cutterM / 2 + EASE_M

const quarterBulge = Math.tan(Math.PI / 8)

/** A rectangle about its centre, its corners rounded by arcs. Anticlockwise. */
export function roundedRectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  radius: number
): readonly DxfPoint[] {
  const [w, h] = [width / 2, height / 2]
  const r = Math.max(0, Math.min(radius, w, h))
  if (r === 0)
    return [
      { x: x - w, y: y - h },
      { x: x + w, y: y - h },
      { x: x + w, y: y + h },
      { x: x - w, y: y + h }
    ]
  const bulge = quarterBulge
  return [
    { x: x - w + r, y: y - h },
    { x: x + w - r, y: y - h, bulge },
    { x: x + w, y: y - h + r },
    { x: x + w, y: y + h - r, bulge },
    { x: x + w - r, y: y + h },
    { x: x - w + r, y: y + h, bulge },
    { x: x - w, y: y + h - r },
    { x: x - w, y: y - h + r, bulge }
  ]
}

type Spot = Pick<DxfPoint, 'x' | 'y'>

const towards = (from: Spot, to: Spot, reach: number): Spot => {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  return { x: from.x + ((to.x - from.x) / length) * reach, y: from.y + ((to.y - from.y) / length) * reach }
}

/** From incoming to outgoing side, positive to the left [rad]. */
function turnAt(before: Spot, corner: Spot, after: Spot): number {
  const [ax, ay, bx, by] = [corner.x - before.x, corner.y - before.y, after.x - corner.x, after.y - corner.y]
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by)
}

/**
 * Relief at the corners of a contour into which the cutter does not get: an arc of its radius through the corner, from
 * 2q·cos(θ/2) before it to as much after it.
 *
 *   bulge = ±cot(θ/2);   taken beyond the corner q²·(π − θ − sin θ)
 *
 * @param points  anticlockwise, straight sides [mm]
 * @param airTurns  1 round a hole: corners that turn left are air corners; −1 round a part: those that turn right
 * @returns the contour; a corner whose sides are too short for it stays as it is
 * @source derived: a circle of radius q that touches no side but passes the corner; θ is the angle of the air
 * @check  60, 90, 110, 140°: area taken to 1e-9 (test); 90° and q = 3: 0.5708·9 = 5.137 mm²
 */
export function relieved(points: readonly Spot[], { radius }: Cutter, airTurns: 1 | -1): readonly DxfPoint[] {
  const at = (index: number) => points[(index + points.length) % points.length] as Spot
  return points.flatMap((corner, index) => {
    const [before, after] = [at(index - 1), at(index + 1)]
    const turn = airTurns * turnAt(before, corner, after)
    const air = Math.PI - turn
    const reach = 2 * radius * Math.cos(air / 2)
    const shortest = Math.min(...[before, after].map(({ x, y }) => Math.hypot(x - corner.x, y - corner.y)))
    if (turn <= 1e-3 || 2 * reach > shortest) return [corner]
    const bulge = airTurns / Math.tan(air / 2)
    return [{ ...towards(corner, before, reach), bulge }, towards(corner, after, reach)]
  })
}

/** The outline of a part: where its own corners are notches, they are relieved. */
export const routedOutline = (outline: Polygon | readonly Spot[], cutter: Cutter | undefined): readonly DxfPoint[] =>
  cutter?.dogBones === true ? relieved(outline, cutter, -1) : outline

/** A rectangular hole: corners no tighter than the cutter; relieved where they are to be sharp. */
export function routedHole(
  { x, y }: Spot,
  { width, height }: { readonly width: number; readonly height: number },
  { cornerRadiusM = 0 }: Pick<CutOut, 'cornerRadiusM'>,
  cutter: Cutter | undefined
): readonly DxfPoint[] {
  const radius = cornerRadiusM * 1000
  if (cutter === undefined || radius >= cutter.radius) return roundedRectangle(x, y, width, height, radius)
  if (!cutter.dogBones || radius > 0) return roundedRectangle(x, y, width, height, cutter.radius)
  return relieved(roundedRectangle(x, y, width, height, 0), cutter, 1)
}
