/** Bodies in a box as convex pieces: boards and blocks as polytopes, tubes and motors as hulls of two discs. */
import type { PanelPlace, Point3 } from '../../../contract/boxes/panel.ts'
import {
  type Convex,
  cross,
  dot,
  minus,
  plus,
  unit,
  type Vector3,
  vector
} from '../../../numeric/geometry/convex-distance.ts'
import type { Point2, Polygon } from '../../../numeric/geometry/polygon.ts'
import { triangles } from '../../../numeric/geometry/triangles.ts'
import type { Direction3 } from '../shell/panel.ts'
import type { Shell } from '../shell/shell.ts'
import { inBox } from '../shell/shell-panels.ts'

export const toVector = ({ xM, yM, zM }: Point3): Vector3 => vector(xM, yM, zM)
export const toDirection = ({ x, y, z }: Direction3): Vector3 => vector(x, y, z)

export interface BoardFrame {
  /** Out of the box. */
  readonly outwards: Vector3
  /** A point of the outline, so deep behind the outer face. */
  readonly at: (point: Point2, depthM: number) => Vector3
}

export function boardFrame({ origin, uAxis, vAxis }: PanelPlace): BoardFrame {
  const [start, u, v] = [toVector(origin), toDirection(uAxis), toDirection(vAxis)]
  const outwards = cross(u, v)
  return { outwards, at: ({ x, y }, depthM) => plus(plus(plus(start, u, x), v, y), outwards, -depthM) }
}

export function polytope(corners: readonly Vector3[], axes: readonly Vector3[]): Convex {
  let low = vector(Infinity, Infinity, Infinity)
  let high = vector(-Infinity, -Infinity, -Infinity)
  let sum = vector(0, 0, 0)
  for (const corner of corners) {
    low = vector(Math.min(low.x, corner.x), Math.min(low.y, corner.y), Math.min(low.z, corner.z))
    high = vector(Math.max(high.x, corner.x), Math.max(high.y, corner.y), Math.max(high.z, corner.z))
    sum = plus(sum, corner)
  }
  return {
    axes,
    middle: plus(vector(0, 0, 0), sum, 1 / corners.length),
    low,
    high,
    support: along => furthest(corners, along)
  }
}

function furthest(corners: readonly Vector3[], along: Vector3): Vector3 {
  let best = corners[0] as Vector3
  let most = dot(best, along)
  for (const corner of corners) {
    const reach = dot(corner, along)
    if (reach > most) [best, most] = [corner, reach]
  }
  return best
}

export interface Disc {
  readonly centre: Vector3
  /** Unit vector. */
  readonly along: Vector3
  readonly radius: number
}

/** Part of a direction square to an axis below which the rim of a disc has no furthest point. */
const NO_DIRECTION = 1e-12

function rimOf({ centre, along, radius }: Disc, towards: Vector3): Vector3 {
  const flat = plus(towards, along, -dot(towards, along))
  const squared = dot(flat, flat)
  return squared <= NO_DIRECTION * dot(towards, towards) ? centre : plus(centre, flat, radius / Math.sqrt(squared))
}

/** Half the size of a disc along the axes of the space. */
function reachOf({ along, radius }: Disc): Vector3 {
  const half = (cosine: number) => radius * Math.sqrt(Math.max(0, 1 - cosine * cosine))
  return vector(half(along.x), half(along.y), half(along.z))
}

/** A cylinder, a frustum or a slice of a bend. */
export function drum(a: Disc, b: Disc): Convex {
  const [one, other] = [reachOf(a), reachOf(b)]
  const edge = (axis: 'x' | 'y' | 'z', sign: 1 | -1) =>
    sign * Math.max(sign * a.centre[axis] + one[axis], sign * b.centre[axis] + other[axis])
  return {
    axes: [a.along, b.along],
    middle: plus(plus(vector(0, 0, 0), a.centre, 0.5), b.centre, 0.5),
    low: vector(edge('x', -1), edge('y', -1), edge('z', -1)),
    high: vector(edge('x', 1), edge('y', 1), edge('z', 1)),
    support: towards => {
      const [first, second] = [rimOf(a, towards), rimOf(b, towards)]
      return dot(first, towards) >= dot(second, towards) ? first : second
    }
  }
}

/** A convex polygon of the profile plane along the axis of the box. */
function bar(axis: Shell['axis'], polygon: Polygon, from: number, to: number): Convex {
  const corners = [from, to].flatMap(along => polygon.map(point => toVector(inBox(axis, point, along))))
  const own = axis === 'x' ? vector(1, 0, 0) : vector(0, 0, 1)
  const sides = polygon.map((point, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? point
    return unit(cross(minus(toVector(inBox(axis, next, 0)), toVector(inBox(axis, point, 0))), own))
  })
  return polytope(corners, [own, ...sides.filter(each => each !== undefined)])
}

/** Any polygon of the profile plane along the axis of the box, in convex pieces. */
export const bars = (axis: Shell['axis'], polygon: Polygon, from: number, to: number): readonly Convex[] =>
  triangles(polygon).map(each => bar(axis, each, from, to))

/** A block square to a frame: its middle, half its size along three unit vectors. */
export function block(middle: Vector3, halves: readonly { readonly along: Vector3; readonly half: number }[]): Convex {
  let corners: readonly Vector3[] = [middle]
  for (const { along, half } of halves) {
    corners = corners.flatMap(point => [plus(point, along, half), plus(point, along, -half)])
  }
  return polytope(
    corners,
    halves.map(({ along }) => along)
  )
}
