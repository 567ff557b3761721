/** Which of several convex bodies is nearer to the eye: what an axis parts, it also orders. */
import { type Convex, dot, type Vector3 } from '../../numeric/geometry/convex-distance.ts'

/** Bodies that touch are parted by the face they share [m]. */
const CONTACT_M = 1e-4

/**
 * Whether b hides a or a hides b, seen along `eye`; 0 where neither does or none of the likely axes parts them.
 *
 * @param eye  towards the eye; a unit vector
 * @source derived: of two sets on either side of a plane the one on the side of the eye cannot be hidden by the other
 */
export function nearer(a: Convex, b: Convex, eye: Vector3): number {
  let [found, steepest] = [0, 1e-6]
  for (const axes of [a.axes, b.axes]) {
    for (const axis of axes) {
      const slope = dot(axis, eye)
      if (Math.abs(slope) <= steepest) continue
      const back = { x: -axis.x, y: -axis.y, z: -axis.z }
      const [lowA, highA] = [dot(axis, a.support(back)), dot(axis, a.support(axis))]
      const [lowB, highB] = [dot(axis, b.support(back)), dot(axis, b.support(axis))]
      const side = lowB > highA - CONTACT_M ? 1 : lowA > highB - CONTACT_M ? -1 : 0
      if (side === 0) continue
      ;[found, steepest] = [Math.sign(slope) * side, Math.abs(slope)]
    }
  }
  return found
}

interface Seen {
  readonly pieces: readonly Convex[]
  /** Box round it on paper. */
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
}

const meetOnPaper = (a: Seen, b: Seen) => a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high

/** Farthest first; where things hide each other in a circle the one whose middle is farthest goes first. */
export function farthestFirst<Item extends Seen>(items: readonly Item[], eye: Vector3): readonly Item[] {
  /** For each the items that have to be drawn before it. */
  const behind = new Map(items.map(item => [item, new Set<Item>()]))
  for (const [i, a] of items.entries()) {
    for (const b of items.slice(i + 1)) {
      if (!meetOnPaper(a, b)) continue
      const votes = a.pieces.reduce((sum, one) => sum + b.pieces.reduce((n, two) => n + nearer(one, two, eye), 0), 0)
      if (votes > 0) behind.get(b)?.add(a)
      if (votes < 0) behind.get(a)?.add(b)
    }
  }
  const depth = ({ pieces }: Item) => pieces.reduce((sum, { middle }) => sum + dot(middle, eye), 0) / pieces.length
  let left = items.toSorted((a, b) => depth(a) - depth(b))
  const order: Item[] = []
  while (left.length > 0) {
    const next =
      left.find(item => ![...(behind.get(item) ?? [])].some(other => left.includes(other))) ?? (left[0] as Item)
    order.push(next)
    left = left.filter(item => item !== next)
  }
  return order
}
