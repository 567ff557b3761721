/** Plane polygons: area, centroid, simplicity, and lines moved inwards. Anticlockwise, the inside on the left of each edge. */

export interface Point2 {
  readonly x: number
  readonly y: number
}

export type Polygon = readonly Point2[]

/** The point at an index that may run past either end. */
export function vertex(polygon: Polygon, index: number): Point2 {
  const { length } = polygon
  const point = polygon[((index % length) + length) % length]
  if (point === undefined) throw new RangeError('a polygon needs points')
  return point
}

const cross = (a: Point2, b: Point2) => a.x * b.y - a.y * b.x
const minus = (a: Point2, b: Point2): Point2 => ({ x: a.x - b.x, y: a.y - b.y })

/** A = ½ Σ (x_i y_{i+1} − x_{i+1} y_i), positive when anticlockwise. Taken from the first point, for small figures far from the origin. */
export function signedArea(polygon: Polygon): number {
  const [first] = polygon
  if (first === undefined) return 0
  const twice = polygon.reduce(
    (sum, point, i) => sum + cross(minus(point, first), minus(vertex(polygon, i + 1), first)),
    0
  )
  return twice / 2
}

/** Centre of area; the mean of the points when the area is nil. */
export function centroid(polygon: Polygon): Point2 {
  const first = vertex(polygon, 0)
  const area = signedArea(polygon)
  let x = 0
  let y = 0
  polygon.forEach((point, i) => {
    const a = minus(point, first)
    const b = minus(vertex(polygon, i + 1), first)
    x += (a.x + b.x) * cross(a, b)
    y += (a.y + b.y) * cross(a, b)
  })
  return area === 0 ? first : { x: first.x + x / (6 * area), y: first.y + y / (6 * area) }
}

export interface Line {
  readonly at: Point2
  /** Unit vector. */
  readonly along: Point2
}

export function edgeLength(polygon: Polygon, edge: number): number {
  const { x, y } = minus(vertex(polygon, edge + 1), vertex(polygon, edge))
  return Math.hypot(x, y)
}

/** The line of an edge, moved inwards by a distance. */
export function edgeLine(polygon: Polygon, edge: number, inwards = 0): Line {
  const from = vertex(polygon, edge)
  const { x, y } = minus(vertex(polygon, edge + 1), from)
  const length = Math.hypot(x, y)
  const along = { x: x / length, y: y / length }
  return { at: { x: from.x - along.y * inwards, y: from.y + along.x * inwards }, along }
}

/** Distance from a line, positive on its left. */
export function leftOf({ at, along }: Line, point: Point2): number {
  return cross(along, minus(point, at))
}

/** How far a point lies along a line from its start. */
export function alongLine({ at, along }: Line, point: Point2): number {
  const { x, y } = minus(point, at)
  return x * along.x + y * along.y
}

/** Where two lines meet; none when they are parallel within 1e-9 rad. */
export function meeting(a: Line, b: Line): Point2 | undefined {
  const sine = cross(a.along, b.along)
  if (Math.abs(sine) < 1e-9) return undefined
  const distance = cross(minus(b.at, a.at), b.along) / sine
  return { x: a.at.x + a.along.x * distance, y: a.at.y + a.along.y * distance }
}

/** Interior angle at a vertex [rad], between 0 and 2π; above π at a re-entrant corner. */
export function interiorAngle(polygon: Polygon, index: number): number {
  const before = edgeLine(polygon, index - 1).along
  const after = edgeLine(polygon, index).along
  const turn = Math.atan2(cross(before, after), before.x * after.x + before.y * after.y)
  return Math.PI - turn
}

function crossesEdge(polygon: Polygon, i: number, j: number): boolean {
  const [a, b, c, d] = [vertex(polygon, i), vertex(polygon, i + 1), vertex(polygon, j), vertex(polygon, j + 1)]
  const side = (p: Point2, q: Point2, r: Point2) => Math.sign(cross(minus(q, p), minus(r, p)))
  const within = (p: Point2, q: Point2, r: Point2) =>
    Math.min(p.x, q.x) <= r.x && r.x <= Math.max(p.x, q.x) && Math.min(p.y, q.y) <= r.y && r.y <= Math.max(p.y, q.y)
  const [sc, sd, sa, sb] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)]
  if (sc * sd < 0 && sa * sb < 0) return true
  return (
    (sc === 0 && within(a, b, c)) ||
    (sd === 0 && within(a, b, d)) ||
    (sa === 0 && within(c, d, a)) ||
    (sb === 0 && within(c, d, b))
  )
}

/** Whether no two edges touch but neighbours at their common point, and no edge is without length. */
export function isSimple(polygon: Polygon): boolean {
  const n = polygon.length
  if (n < 3) return false
  for (let i = 0; i < n; i++) {
    if (!(edgeLength(polygon, i) > 0)) return false
    for (let j = i + 2; j < n; j++) {
      if ((j + 1) % n !== i && crossesEdge(polygon, i, j)) return false
    }
  }
  return polygon.every((_, i) => interiorAngle(polygon, i) > 1e-9 && interiorAngle(polygon, i) < 2 * Math.PI - 1e-9)
}

/** The part of a convex or concave polygon on the left of a line (Sutherland and Hodgman 1974, one half plane). */
export function leftPart(polygon: Polygon, line: Line): Polygon {
  return polygon.flatMap((point, i) => {
    const next = vertex(polygon, i + 1)
    const here = leftOf(line, point)
    const there = leftOf(line, next)
    const kept = here >= 0 ? [point] : []
    if (here * there >= 0) return kept
    const share = here / (here - there)
    return [...kept, { x: point.x + (next.x - point.x) * share, y: point.y + (next.y - point.y) * share }]
  })
}

/** Smallest upright rectangle round the points. */
export function bounds(polygon: Polygon) {
  const xs = polygon.map(({ x }) => x)
  const ys = polygon.map(({ y }) => y)
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  return { left, right, low, high, width: right - left, height: high - low }
}
