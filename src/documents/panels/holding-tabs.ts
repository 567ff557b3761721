/** Where bridges of wood hold a part in its sheet until it is routed free. Millimetres. */
import type { Polygon } from '../../numeric/geometry/polygon.ts'

/** Common practice, no source: a bridge 6 to 8 long and 3 high, two at least, none near a corner. */
export const tabRule = { long: 8, high: 3, fromCorner: 20, apart: 450 } as const

interface Tab {
  /** Its middle, on the outline. */
  readonly x: number
  readonly y: number
  /** Along the outline, of length 1. */
  readonly alongX: number
  readonly alongY: number
}

interface Side {
  readonly x: number
  readonly y: number
  readonly dx: number
  readonly dy: number
  readonly length: number
}

function sidesOf(outline: Polygon): readonly Side[] {
  return outline.map(({ x, y }, index) => {
    const next = outline[(index + 1) % outline.length] ?? { x, y }
    return { x, y, dx: next.x - x, dy: next.y - y, length: Math.hypot(next.x - x, next.y - y) }
  })
}

/** The middle of the first tab and of the last keep from the corners. */
const room = ({ length }: Side) => length - 2 * tabRule.fromCorner - tabRule.long

const along = ({ x, y, dx, dy, length }: Side, count: number): readonly Tab[] =>
  Array.from({ length: count }, (_, index) => {
    const share = (index + 0.5) / count
    return { x: x + share * dx, y: y + share * dy, alongX: dx / length, alongY: dy / length }
  })

/**
 * One on each side that has room, more on a long one; a part with room on a single side gets both there.
 *
 * @param outline  of one part, notches taken out [mm]
 * @returns none where no side is long enough: such a part is held by screws in its waste, or sawn
 */
export function holdingTabs(outline: Polygon): readonly Tab[] {
  const sides = sidesOf(outline).filter(side => room(side) > 0)
  const [only] = sides
  if (sides.length === 1 && only !== undefined) return room(only) < tabRule.long ? along(only, 1) : along(only, 2)
  return sides.flatMap(side => along(side, Math.max(1, Math.round(side.length / tabRule.apart))))
}
