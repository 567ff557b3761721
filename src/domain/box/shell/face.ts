/** Faces of a box that carry drivers, ports and fittings: their frame, and the inside behind them. */

import type { PlaceOnPanel } from '../../../contract/boxes/box-hardware.ts'
import type { PanelPlace, Point3 } from '../../../contract/boxes/panel.ts'
import type { FaceName } from '../../../contract/boxes/words.ts'
import { type Polygon, vertex } from '../../../numeric/geometry/polygon.ts'
import { insideDistance, rayLength } from '../../../numeric/geometry/polygon-distance.ts'
import { DesignError } from '../../design-error.ts'
import { listed, say } from '../../say.ts'
import { boardFace } from './board-faces.ts'
import type { Direction3 } from './panel.ts'
import { clearLength, type Shell, wallDepth, wallOf } from './shell.ts'
import type { BarePanel } from './shell-panels.ts'

export interface Inside {
  readonly shell: Shell
  readonly inner: Polygon
}

export interface Face {
  readonly name: FaceName
  readonly place: PanelPlace
  /** From the outer face inwards. */
  readonly inwards: Direction3
  /** All boards of the face [m]. */
  readonly thicknessM: number
  /** The part of the face that has the inside behind it, in the frame of the outer panel. */
  readonly clear: Polygon
  /** The outer face of its board: smaller than the inside where a leaning board stands between two others. */
  readonly outer: Polygon
}

/** From a point of a face to where its hole would run into the wood of a neighbour, before or behind the board [m]. */
export const roomForHole = ({ clear, outer }: Face, { uM, vM }: PlaceOnPanel): number =>
  Math.min(insideDistance(clear, { x: uM, y: vM }), insideDistance(outer, { x: uM, y: vM }))

export const onFace = ({ origin, uAxis: u, vAxis: v }: PanelPlace, { uM, vM }: PlaceOnPanel): Point3 => ({
  xM: origin.xM + uM * u.x + vM * v.x,
  yM: origin.yM + uM * u.y + vM * v.y,
  zM: origin.zM + uM * u.z + vM * v.z
})

/** The nearest point of a panel's frame to a point of the box. */
export function inFrame({ origin, uAxis: u, vAxis: v }: PanelPlace, { xM, yM, zM }: Point3): PlaceOnPanel {
  const [x, y, z] = [xM - origin.xM, yM - origin.yM, zM - origin.zM]
  return { uM: x * u.x + y * u.y + z * u.z, vM: x * v.x + y * v.y + z * v.z }
}

export const moved = ({ xM, yM, zM }: Point3, { x, y, z }: Direction3, distance: number): Point3 => ({
  xM: xM + x * distance,
  yM: yM + y * distance,
  zM: zM + z * distance
})

const crossed = (a: Direction3, b: Direction3): Direction3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x
})

/** A point of the box as (across the profile, along the axis). */
export function profilePoint(axis: Shell['axis'], { xM, yM, zM }: Point3) {
  return axis === 'x' ? { x: yM, y: zM, along: xM } : { x: xM, y: yM, along: zM }
}

/** From a point inside, straight on to the first inner face. */
export function roomAhead({ shell, inner }: Inside, point: Point3, towards: Direction3): number {
  const from = profilePoint(shell.axis, point)
  const ahead = profilePoint(shell.axis, { xM: towards.x, yM: towards.y, zM: towards.z })
  const across = Math.hypot(ahead.x, ahead.y)
  const start = shell.caps.low.thicknessM
  const toCap =
    ahead.along > 1e-12
      ? (start + clearLength(shell) - from.along) / ahead.along
      : ahead.along < -1e-12
        ? (start - from.along) / ahead.along
        : Infinity
  if (across < 1e-12) return toCap
  const toWall = rayLength(inner, from, { x: ahead.x / across, y: ahead.y / across }) / across
  return Math.min(toCap, toWall)
}

/** Corners of the inside behind a panel, in the frame of that panel. */
function clearPart({ shell, inner }: Inside, panel: BarePanel): Polygon {
  const { wall, place } = panel
  if (wall === 'inside') return panel.outline.map(({ uM, vM }) => ({ x: uM, y: vM }))
  const [start, end] = [shell.caps.low.thicknessM, shell.lengthM - shell.caps.high.thicknessM]
  const at = (x: number, y: number, along: number): Point3 =>
    shell.axis === 'x' ? { xM: along, yM: x, zM: y } : { xM: x, yM: y, zM: along }
  const corners =
    typeof wall === 'string'
      ? inner.map(({ x, y }) => at(x, y, 0))
      : [start, end].flatMap(along =>
          [wall, wall + 1].map(index => {
            const { x, y } = vertex(inner, index)
            return at(x, y, along)
          })
        )
  const points = corners.map(corner => inFrame(place, corner)).map(({ uM, vM }) => ({ x: uM, y: vM }))
  if (typeof wall === 'string') return wall === 'high' ? points : points.toReversed()
  const [us, vs] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  const [left, right, low, high] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)]
  return [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high }
  ]
}

const faceOf = (panel: BarePanel): FaceName | undefined =>
  panel.layer === 0 && panel.role !== 'wall' ? (panel.name as FaceName) : undefined

/** @throws DesignError `conflicting-input` when the shape has no such face */
export function findFace(inside: Inside, panels: readonly BarePanel[], name: FaceName, field: string): Face {
  const panel = panels.find(each => faceOf(each) === name)
  if (panel === undefined) {
    const names = panels.map(faceOf).filter(each => each !== undefined)
    throw new DesignError('conflicting-input', {
      field,
      value: name,
      detail: say('refused.this-box-has-no-its-faces', { name, names: listed(names) })
    })
  }
  const { uAxis, vAxis } = panel.place
  const outwards = crossed(uAxis, vAxis)
  const layers =
    typeof panel.wall === 'string'
      ? panel.thicknessM
      : wallDepth(wallOf(inside.shell, panel.wall)) - wallOf(inside.shell, panel.wall).recessM
  return {
    name,
    place: panel.place,
    inwards: { x: -outwards.x, y: -outwards.y, z: -outwards.z },
    thicknessM: layers,
    clear: clearPart(inside, panel),
    outer: boardFace(panel, 'outer')
  }
}
