/** A simple polygon in convex pieces. */
import { leftOf, type Point2, type Polygon, signedArea, vertex } from './polygon.ts'

const isConvex = (polygon: Polygon) =>
  polygon.every((_, i) => turn(vertex(polygon, i - 1), vertex(polygon, i), vertex(polygon, i + 1)) >= 0)

function turn(a: Point2, b: Point2, c: Point2): number {
  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)
}

const within = (a: Point2, b: Point2, c: Point2, p: Point2) =>
  [
    [a, b],
    [b, c],
    [c, a]
  ].every(([from, to]) => {
    const [start, end] = [from as Point2, to as Point2]
    return leftOf({ at: start, along: { x: end.x - start.x, y: end.y - start.y } }, p) > -1e-15
  })

/**
 * The polygon itself where it is convex, else triangles cut off corner by corner.
 *
 * @param polygon  simple; clockwise ones are turned round
 * @source ear clipping, G. H. Meisters 1975, from memory
 * @check  the areas of the pieces add up to that of the polygon
 */
export function triangles(polygon: Polygon): readonly Polygon[] {
  let rest = signedArea(polygon) < 0 ? polygon.toReversed() : polygon
  if (isConvex(rest)) return [rest]
  const pieces: Polygon[] = []
  while (rest.length > 3) {
    const corners = rest
    const ear = corners.findIndex((b, i) => {
      const [a, c] = [vertex(corners, i - 1), vertex(corners, i + 1)]
      const others = corners.filter(p => p !== a && p !== b && p !== c)
      return turn(a, b, c) > 0 && !others.some(p => within(a, b, c, p))
    })
    // A corner without a turn belongs to no piece.
    const cut =
      ear >= 0 ? ear : corners.findIndex((b, i) => turn(vertex(corners, i - 1), b, vertex(corners, i + 1)) === 0)
    if (ear >= 0) pieces.push([vertex(corners, ear - 1), vertex(corners, ear), vertex(corners, ear + 1)])
    rest = corners.filter((_, i) => i !== Math.max(0, cut))
  }
  return [...pieces, rest]
}
