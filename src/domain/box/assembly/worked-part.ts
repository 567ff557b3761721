/** A board with what is cut into it for its joints, and grown by its tongues. */
import type { CutOut, Panel, PanelMark } from '../../../contract/boxes/panel.ts'
import { bounds, type Polygon, signedArea } from '../../../numeric/geometry/polygon.ts'
import { insetPolygon } from '../../../numeric/geometry/polygon-inset.ts'
import { piecesWithout } from '../../../numeric/geometry/polygon-window.ts'
import { blankOf, windowOf } from '../shell/board-faces.ts'
import { moved } from '../shell/face.ts'

/** A nanometre is no wood. */
const clean = (metres: number) => Math.round(metres * 1e9) / 1e9

/** The blank with each edge moved outwards by its own distance. */
export function grownBlank(part: Panel, growth: readonly number[]): Polygon {
  const blank = blankOf(part)
  if (growth.every(each => each === 0)) return blank
  const grown = insetPolygon(
    blank,
    growth.map(each => -each)
  )
  return 'polygon' in grown ? grown.polygon : blank
}

/** Wood left of a blank: fingers share its corners, pockets lie side by side. */
function woodM3(blank: Polygon, cuts: readonly CutOut[], thicknessM: number): number {
  const fingers = cuts.filter(({ rebateDepthM }) => rebateDepthM === undefined)
  const pockets = cuts.reduce(
    (sum, { widthM = 0, heightM = 0, rebateDepthM = 0 }) => sum + widthM * heightM * rebateDepthM,
    0
  )
  const left = piecesWithout(blank, fingers.map(windowOf)).reduce((sum, piece) => sum + signedArea(piece), 0)
  return left * thicknessM - pockets
}

/** That its frame moves by, to the lower left corner of the grown blank. */
export function shiftOf(part: Panel, outline: Polygon): { readonly u: number; readonly v: number } {
  const [before, after] = [bounds(blankOf(part)), bounds(outline)]
  return { u: before.left - after.left, v: before.low - after.low }
}

/** The part with its tongues and its cuts, its frame at the new lower left corner. */
export function workedPart(part: Panel, outline: Polygon, cuts: readonly CutOut[], densityKgPerM3: number): Panel {
  const blank = blankOf(part)
  const [before, after] = [bounds(blank), bounds(outline)]
  const { u, v } = shiftOf(part, outline)
  const more = { u: after.width - before.width, v: after.height - before.height }
  const { lengthAlong, place, thicknessM } = part
  const [long, across] = lengthAlong === 'u' ? [more.u, more.v] : [more.v, more.u]
  const sides = [part.lengthM + long, part.widthM + across] as const
  const turns = sides[1] > sides[0]
  const addedM3 = woodM3(outline, cuts, thicknessM) - signedArea(blank) * thicknessM
  return {
    ...part,
    lengthM: clean(Math.max(...sides)),
    widthM: clean(Math.min(...sides)),
    lengthAlong: turns ? (lengthAlong === 'u' ? 'v' : 'u') : lengthAlong,
    outline: outline.map(({ x, y }) => ({ uM: clean(x + u), vM: clean(y + v) })),
    cutOuts: [...part.cutOuts, ...cuts].map(cut => ({ ...cut, uM: clean(cut.uM + u), vM: clean(cut.vM + v) })),
    massKg: part.massKg + addedM3 * densityKgPerM3,
    ...(place === undefined
      ? {}
      : { place: { ...place, origin: moved(moved(place.origin, place.uAxis, -u), place.vAxis, -v) } })
  }
}

/** In the frame of the board once it has grown. */
export function movedMark(mark: PanelMark, part: Panel, outline: Polygon): PanelMark {
  const { u, v } = shiftOf(part, outline)
  const at = ({ uM, vM }: PanelMark['from']) => ({ uM: clean(uM + u), vM: clean(vM + v) })
  return { ...mark, from: at(mark.from), to: at(mark.to), screws: mark.screws.map(at) }
}
