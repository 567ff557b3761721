/** How far a point lies from the edge of a polygon. */
import { type Point2, type Polygon, vertex } from './polygon.ts'

function toSegment(a: Point2, b: Point2, p: Point2): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const share = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)))
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy)
}

/** Even-odd rule. */
export function contains(polygon: Polygon, p: Point2): boolean {
  let inside = false
  polygon.forEach((a, i) => {
    const b = vertex(polygon, i + 1)
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside
  })
  return inside
}

/** Distance to the nearest edge, negative outside. */
export function insideDistance(polygon: Polygon, point: Point2): number {
  const distance = Math.min(...polygon.map((a, i) => toSegment(a, vertex(polygon, i + 1), point)))
  return contains(polygon, point) ? distance : -distance
}

/** From a point along a direction (unit vector) to the first edge ahead; Infinity when none is. */
export function rayLength(polygon: Polygon, from: Point2, along: Point2): number {
  const lengths = polygon.flatMap((a, i) => {
    const b = vertex(polygon, i + 1)
    const edge = { x: b.x - a.x, y: b.y - a.y }
    const determinant = along.x * edge.y - along.y * edge.x
    if (Math.abs(determinant) < 1e-15) return []
    const [dx, dy] = [a.x - from.x, a.y - from.y]
    const ahead = (dx * edge.y - dy * edge.x) / determinant
    const share = (dx * along.y - dy * along.x) / determinant
    return ahead > 1e-9 && share >= -1e-12 && share <= 1 + 1e-12 ? [ahead] : []
  })
  return Math.min(Infinity, ...lengths)
}
