/** The side of a slot that is narrower than its box, in strips: a leg each, butted against one another. */
import { type Line, meeting, type Point2, type Polygon } from '../../../numeric/geometry/polygon.ts'
import type { SlotRun } from './slot-run.ts'

const through = (from: Point2, to: Point2): Line => {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  return { at: from, along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length } }
}

/**
 * Every leg runs on to the wall that it meets, the next starts on its inner edge. One board of the whole outline would have a
 * corner inwards, which no panel saw cuts, and most of its blank would be waste.
 *
 * @source derived: intersection of lines
 * @check  the strips' areas add up to that of the channel
 */
export function cheekStrips({ channel, legs }: Pick<SlotRun, 'channel' | 'legs'>): readonly Polygon[] {
  const wall = channel.slice(0, legs + 1)
  const inner = channel.slice(legs + 1).toReversed()
  const corner = (points: readonly Point2[], k: number) => points[k] as Point2
  /** Where the inner edge of a leg meets the wall beyond its bend. */
  const ends = Array.from({ length: legs - 1 }, (_, k) => {
    const edge = through(corner(inner, k), corner(inner, k + 1))
    const beyond = through(corner(wall, k + 1), corner(wall, k + 2))
    return meeting(edge, beyond) ?? corner(inner, k + 1)
  })
  return Array.from({ length: legs }, (_, k) => [
    k === 0 ? corner(wall, 0) : (ends[k - 1] as Point2),
    corner(wall, k + 1),
    ends[k] ?? corner(inner, k + 1),
    corner(inner, k)
  ])
}
