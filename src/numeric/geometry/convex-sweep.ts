/** A convex body together with all the places it passes through when it is moved straight. */
import { type Convex, cross, plus, unit, type Vector3, vector } from './convex-distance.ts'

const none = vector(0, 0, 0)

/** Normals of the faces that the edges of a body draw when it is moved. */
function drawnFaces(axes: readonly Vector3[], along: Vector3): readonly Vector3[] {
  return axes.flatMap((one, i) => axes.slice(i + 1).flatMap(other => unit(cross(cross(one, other), along)) ?? []))
}

/**
 * The sum of a body and a stretch, which is convex again: its furthest point is that of the body, moved where the way leads there.
 *
 * @param along  unit vector
 * @param lengthM  how far it is moved, ≥ 0 [m]
 * @source derived: the support function of a sum of convex sets is the sum of theirs
 * @check  a cube of 1 moved by 2 along x reaches from −0.5 to 2.5 and stays 1 high
 */
export function swept(body: Convex, along: Vector3, lengthM: number): Convex {
  const shift = plus(none, along, lengthM)
  let axes: readonly Vector3[] | undefined
  const [low, high] = [plus(body.low, shift), plus(body.high, shift)]
  return {
    support: towards => {
      const point = body.support(towards)
      const isAhead = towards.x * along.x + towards.y * along.y + towards.z * along.z > 0
      return isAhead ? plus(point, shift) : point
    },
    middle: plus(body.middle, shift, 0.5),
    // Seldom asked for: most ways are clear or blocked by their bounds alone.
    get axes() {
      axes ??= [...body.axes, ...drawnFaces(body.axes, along)]
      return axes
    },
    low: vector(Math.min(low.x, body.low.x), Math.min(low.y, body.low.y), Math.min(low.z, body.low.z)),
    high: vector(Math.max(high.x, body.high.x), Math.max(high.y, body.high.y), Math.max(high.z, body.high.z))
  }
}
