/** A polygon with a rectangle cut out of it: in convex pieces, or as an outline where the rectangle lies on its edge. */
import { alongLine, leftOf, leftPart, type Point2, type Polygon, signedArea, vertex } from './polygon.ts'
import { triangles } from './triangles.ts'

interface Window {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The convex pieces of a polygon round a window: left of it, right of it, and between these below and above it. */
export function roundWindow(polygon: Polygon, { x, y, width, height }: Window): readonly Polygon[] {
  const [left, right, low, high] = [x - width / 2, x + width / 2, y - height / 2, y + height / 2]
  const before = { at: { x: left, y: 0 }, along: { x: 0, y: 1 } }
  const behind = { at: { x: right, y: 0 }, along: { x: 0, y: -1 } }
  const middle = {
    from: { at: { x: left, y: 0 }, along: { x: 0, y: -1 } },
    to: { at: { x: right, y: 0 }, along: { x: 0, y: 1 } }
  }
  const below = { at: { x: 0, y: low }, along: { x: -1, y: 0 } }
  const above = { at: { x: 0, y: high }, along: { x: 1, y: 0 } }
  return triangles(polygon)
    .flatMap(each => {
      const between = leftPart(leftPart(each, middle.from), middle.to)
      return [leftPart(each, before), leftPart(each, behind), leftPart(between, below), leftPart(between, above)]
    })
    .filter(piece => piece.length > 2)
}

/** The convex pieces that rectangles leave of a polygon. */
export const piecesWithout = (polygon: Polygon, windows: readonly Window[]): readonly Polygon[] =>
  windows.reduce<readonly Polygon[]>(
    (left, window) => left.flatMap(piece => roundWindow(piece, window)).filter(piece => signedArea(piece) > ONE_POINT),
    triangles(polygon)
  )

/** Points nearer than this are one [m]. */
const ONE_POINT = 1e-7
const keyOf = ({ x, y }: Point2) => `${Math.round(x / ONE_POINT)} ${Math.round(y / ONE_POINT)}`

type Edge = readonly [Point2, Point2]

/** An edge in parts between the points that lie on it. */
function splitAt([from, to]: Edge, points: readonly Point2[]): readonly Edge[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const line = { at: from, along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length } }
  const stops = points
    .filter(point => Math.abs(leftOf(line, point)) < ONE_POINT)
    .map(point => ({ point, place: alongLine(line, point) }))
    .filter(({ place }) => place > ONE_POINT && place < length - ONE_POINT)
    .toSorted((a, b) => a.place - b.place)
    .map(({ point }) => point)
  const ends = [from, ...stops, to]
  return ends.slice(1).map((end, i): Edge => [ends[i] ?? from, end])
}

/** Corners only: points in line with their neighbours, or on them, left out. */
function cornersOf(polygon: Polygon): Polygon {
  return polygon.filter((point, i) => {
    const [before, after] = [vertex(polygon, i - 1), vertex(polygon, i + 1)]
    const turn = (point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x)
    return Math.abs(turn) > ONE_POINT * ONE_POINT && keyOf(point) !== keyOf(before)
  })
}

/** What is left of a polygon: its outlines anticlockwise, the holes in them clockwise. */
function loopsOf(pieces: readonly Polygon[]): readonly Polygon[] {
  const points = pieces.flat()
  const edges = pieces
    .flatMap(piece => piece.map((from, i): Edge => [from, vertex(piece, i + 1)]))
    .filter(([from, to]) => keyOf(from) !== keyOf(to))
    .flatMap(edge => splitAt(edge, points))
  const known = new Set(edges.map(([from, to]) => `${keyOf(from)} ${keyOf(to)}`))
  const next = new Map(
    edges
      .filter(([from, to]) => !known.has(`${keyOf(to)} ${keyOf(from)}`))
      .map(([from, to]) => [keyOf(from), { from, to: keyOf(to) }])
  )
  const loops: Polygon[] = []
  for (const [start] of next) {
    const loop: Point2[] = []
    for (let at = next.get(start), key = start; at !== undefined; key = at.to, at = next.get(key)) {
      loop.push(at.from)
      next.delete(key)
    }
    loops.push(cornersOf(loop))
  }
  return loops.filter(loop => loop.length > 2)
}

/**
 * What rectangles leave of a polygon: pieces joined along their common edges.
 *
 * @param polygon  simple, anticlockwise [m]
 * @returns outlines anticlockwise, holes in them clockwise
 * @validity No two loops meet in a corner.
 * @source derived: edges that two pieces share in opposite directions are inside
 * @check  1 × 1 less 0.2 × 1 in its middle → two outlines of 0.4; less 0.2 × 0.2 → an outline and a hole, 0.96
 */
export const withoutRectangles = (polygon: Polygon, windows: readonly Window[]): readonly Polygon[] =>
  loopsOf(piecesWithout(polygon, windows))

/**
 * The outline that rectangles on its edge leave of a polygon.
 *
 * @param polygon  simple, anticlockwise [m]
 * @returns none where nothing is left; the largest part where they part the polygon
 * @source derived: edges that two pieces share in opposite directions are inside
 * @check  1 × 1 less 0.4 × 0.2 in the middle of its foot → eight corners, 0.92
 */
export const notched = (polygon: Polygon, windows: readonly Window[]): Polygon | undefined =>
  withoutRectangles(polygon, windows).toSorted((a, b) => signedArea(b) - signedArea(a))[0]
