/** How far a point lies from a line and from the edge of a polygon. */
import { type Point2, type Polygon, vertex } from './polygon.ts'

/** To the nearest point between two ends, which may be one. */
export function segmentDistance(a: Point2, b: Point2, p: Point2): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const squared = dx * dx + dy * dy
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / squared))
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy)
}

/** Even-odd rule. */
export function contains(polygon: Polygon, p: Point2): boolean {
  let inside = false
  let a = vertex(polygon, -1)
  for (const b of polygon) {
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside
    a = b
  }
  return inside
}

/** Distance to the nearest edge, negative outside. */
export function insideDistance(polygon: Polygon, point: Point2): number {
  let distance = Infinity
  let a = vertex(polygon, -1)
  for (const b of polygon) {
    distance = Math.min(distance, segmentDistance(a, b, point))
    a = b
  }
  return contains(polygon, point) ? distance : -distance
}

/** From a point along a direction (unit vector) to the first edge ahead; Infinity when none is. */
export function rayLength(polygon: Polygon, from: Point2, along: Point2): number {
  let length = Infinity
  let a = vertex(polygon, -1)
  for (const b of polygon) {
    const [edgeX, edgeY, dx, dy] = [b.x - a.x, b.y - a.y, a.x - from.x, a.y - from.y]
    const determinant = along.x * edgeY - along.y * edgeX
    a = b
    if (Math.abs(determinant) < 1e-15) continue
    const ahead = (dx * edgeY - dy * edgeX) / determinant
    const share = (dx * along.y - dy * along.x) / determinant
    if (ahead > 1e-9 && share >= -1e-12 && share <= 1 + 1e-12) length = Math.min(length, ahead)
  }
  return length
}

/**
 * Parts of a stretch that lie inside a polygon, as shares of it from its start.
 *
 * @check  from (−1, 1) to (3, 1) over a square of 2 → from a quarter to three quarters
 */
export function insideStretches(polygon: Polygon, from: Point2, to: Point2): readonly (readonly [number, number])[] {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const crossings = polygon.flatMap((a, i) => {
    const b = vertex(polygon, i + 1)
    const [ex, ey] = [b.x - a.x, b.y - a.y]
    const determinant = dx * ey - dy * ex
    if (Math.abs(determinant) < 1e-15) return []
    const share = ((a.x - from.x) * ey - (a.y - from.y) * ex) / determinant
    return share > 0 && share < 1 ? [share] : []
  })
  const shares = [0, ...crossings.toSorted((a, b) => a - b), 1]
  return shares.slice(1).flatMap((end, i) => {
    const start = shares[i] ?? 0
    const middle = (start + end) / 2
    return end - start > 1e-12 && contains(polygon, { x: from.x + dx * middle, y: from.y + dy * middle })
      ? [[start, end] as const]
      : []
  })
}
