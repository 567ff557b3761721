/** Puts texts where they cross nothing: each names places in the order it likes them and takes the first that is clear. */
import { segmentDistance } from '../../numeric/geometry/polygon-distance.ts'
import { type SvgTextStyle, textAt, textWidth } from './svg.ts'

export interface Spot {
  readonly x: number
  readonly y: number
}

/** Whether a point comes nearer to something drawn than `half`. */
export type Drawn = (spot: Spot, half: number) => boolean

export const drawnLine =
  (a: Spot, b: Spot, reach = 0): Drawn =>
  (spot, half) =>
    segmentDistance(a, b, spot) < reach + half

/** Filled: a text stands neither on its rim nor inside. */
export const drawnDisc = (centre: Spot, radius: number): Drawn => drawnLine(centre, centre, radius)

/** Filled, upright; `x` and `y` of its middle. */
export const drawnBlock =
  (middle: Spot, width: number, height: number): Drawn =>
  ({ x, y }, half) =>
    Math.abs(x - middle.x) < width / 2 + half && Math.abs(y - middle.y) < height / 2 + half

/** Where the middle of a text may stand, and its turn [°, clockwise]. */
export interface TextPlace extends Spot {
  readonly turn: number
}

export interface PlacedText {
  readonly text: string
  readonly places: readonly TextPlace[]
  readonly style: Omit<SvgTextStyle, 'anchor' | 'turn'>
}

/** Half the height of a letter with a little air, as a share of its size. */
const HALF_LETTER = 0.5

/** From the base line to the middle of a letter, as a share of its size. */
const MIDDLE = 0.36

/** Points along the middle line of a text, a letter apart at most. */
function pointsOf({ x, y, turn }: TextPlace, half: number, size: number): readonly Spot[] {
  const count = Math.max(2, Math.ceil((2 * half) / size) + 1)
  const [dx, dy] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)]
  return Array.from({ length: count }, (_, i) => {
    const along = half * ((2 * i) / (count - 1) - 1)
    return { x: x + along * dx, y: y + along * dy }
  })
}

export function clearTexts(texts: readonly PlacedText[], drawn: readonly Drawn[]): string {
  const inTheWay = [...drawn]
  return texts
    .map(({ text, places, style }) => {
      const { size } = style
      const half = textWidth(text, size) / 2
      const crossed = (place: TextPlace) =>
        pointsOf(place, half, size).reduce(
          (sum, point) => sum + inTheWay.filter(isNear => isNear(point, HALF_LETTER * size)).length,
          0
        )
      let [best, least] = [places[0] as TextPlace, Infinity]
      for (const place of places) {
        const count = crossed(place)
        if (count < least) [best, least] = [place, count]
        if (count === 0) break
      }
      const ends = pointsOf(best, half, size)
      inTheWay.push(drawnLine(ends[0] as Spot, ends.at(-1) as Spot, HALF_LETTER * size))
      const radians = (best.turn * Math.PI) / 180
      const [x, y] = [best.x - MIDDLE * size * Math.sin(radians), best.y + MIDDLE * size * Math.cos(radians)]
      return textAt(x, y, text, { ...style, anchor: 'middle', turn: best.turn })
    })
    .join('')
}
