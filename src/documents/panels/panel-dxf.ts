/** Panels and sheets as drawing exchange files for a router, a laser or a cutting service. */
import type { Routing } from '../../contract/boxes/box-drawings.ts'
import type { LaidPiece, SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { CutOut, Panel, PanelMark } from '../../contract/boxes/panel.ts'
import { screwSizeFor } from '../../domain/box/assembly/joint-screws.ts'
import { isNotch, notchedFace } from '../../domain/box/shell/board-faces.ts'
import { mapped } from '../../numeric/tuple.ts'
import { type DxfFile, type DxfLayer, type DxfPoint, dxfFile, gradedLayer } from '../draw/dxf.ts'
import { holdingTabs, tabRule } from './holding-tabs.ts'
import { isMirrored } from './mirrored.ts'
import { drawnApart } from './panel-copies.ts'
import { marksOn } from './panel-marks.ts'
import { type Cutter, roundedRectangle, routedHole, routedOutline } from './routed-contour.ts'

/** From the frame of a panel [m] to the file [mm]. */
type Placed = (uM: number, vM: number) => DxfPoint

const cutterOf = ({ radiusM, dogBones }: Routing): Cutter => ({ radius: radiusM * 1000, dogBones })

/** A pocket of the face that lies down waits until the board is turned over. */
function layerOf({ rebateDepthM, face }: CutOut, innerUp: boolean): DxfLayer {
  if (rebateDepthM === undefined) return 'HOLES'
  return gradedLayer((face === 'inner') === innerUp ? 'POCKET' : 'TURNED', rebateDepthM * 1000)
}

/** A pocket that ends at an edge runs over it by the cutter, which leaves no round corner there. */
function runOver(panel: Panel, cut: CutOut, cutter: Cutter | undefined): CutOut {
  if (cutter === undefined || cut.face !== 'inner') return cut
  const { u, v } = reachOf(panel)
  const { uM, vM, widthM = 0, heightM = 0 } = cut
  const more = (atEdge: boolean) => (atEdge ? cutter.radius / 1000 : 0)
  const [left, right] = [more(uM - widthM / 2 < 1e-6), more(uM + widthM / 2 > u - 1e-6)]
  const [low, high] = [more(vM - heightM / 2 < 1e-6), more(vM + heightM / 2 > v - 1e-6)]
  return {
    ...cut,
    uM: uM + (right - left) / 2,
    vM: vM + (high - low) / 2,
    widthM: widthM + left + right,
    heightM: heightM + low + high
  }
}

function addHole(file: DxfFile, cutOut: CutOut, { placed, quarterTurned, innerUp }: Laid, cutter?: Cutter): void {
  const { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0, screwCircle } = cutOut
  const layer = layerOf(cutOut, innerUp)
  const { x, y } = placed(uM, vM)
  const [width, height] = quarterTurned ? [heightM, widthM] : [widthM, heightM]
  if (kind === 'circle') file.circle(layer, x, y, (diameterM / 2) * 1000)
  else file.contour(layer, routedHole({ x, y }, { width: width * 1000, height: height * 1000 }, cutOut, cutter))
  if (screwCircle === undefined) return
  for (let index = 0; index < screwCircle.count; index++) {
    const angle = ((screwCircle.startAngleDeg + (360 * index) / screwCircle.count) * Math.PI) / 180
    const reach = screwCircle.diameterM / 2
    const screw = placed(uM + reach * Math.cos(angle), vM + reach * Math.sin(angle))
    file.circle(
      gradedLayer('DRILL', screwCircle.holeDiameterM * 1000),
      screw.x,
      screw.y,
      screwCircle.holeDiameterM * 500
    )
  }
}

const reachOf = ({ outline }: Panel) => ({
  u: Math.max(...outline.map(({ uM }) => uM)),
  v: Math.max(...outline.map(({ vM }) => vM))
})

interface Laid {
  readonly title: string
  readonly placed: Placed
  readonly quarterTurned: boolean
  /** A board with pockets for its joints lies on its outer face. */
  readonly innerUp: boolean
}

const liesInnerUp = ({ cutOuts }: Panel) => cutOuts.some(({ face }) => face === 'inner')

function addPanel(file: DxfFile, panel: Panel, laid: Laid, routing?: Routing): void {
  const { title, placed } = laid
  // A notch is part of the outline, or its edge would be cut twice; tilts are said in words, the outline is the blank's.
  const outline = anticlockwise(notchedFace({ ...panel, edges: [] }, 'outer').map(({ x, y }) => placed(x, y)))
  const cutter = routing && cutterOf(routing)
  file.contour('CUT', routedOutline(outline, cutter))
  if (cutter !== undefined && routing?.tabs === true) addTabs(file, outline, cutter)
  const holes = panel.cutOuts.filter(cutOut => !isNotch(panel, cutOut))
  for (const cutOut of holes) addHole(file, runOver(panel, cutOut, cutter), laid, cutter)
  addEdges(file, panel, placed)
  addWords(file, [...tiltNotes(panel), title], panel, placed)
}

/** Mirrored twins run the other way round. */
function anticlockwise(outline: readonly DxfPoint[]): readonly DxfPoint[] {
  const twice = outline.reduce((sum, { x, y }, index) => {
    const next = outline[(index + 1) % outline.length] ?? { x, y }
    return sum + x * next.y - next.x * y
  }, 0)
  return twice < 0 ? outline.toReversed() : outline
}

/** A line across the way of the cutter for each bridge that is left. */
function addTabs(file: DxfFile, outline: readonly DxfPoint[], { radius }: Cutter): void {
  for (const { x, y, alongX, alongY } of holdingTabs(outline)) {
    const reach = 2 * radius
    file.line(
      'TABS',
      { x: x + alongY * reach, y: y - alongX * reach },
      { x: x - alongY * reach, y: y + alongX * reach }
    )
  }
}

/** The edges that are sawn at a tilt, by their angle: a router cuts square, along the larger face. */
function addEdges(file: DxfFile, { outline, edges }: Panel, placed: Placed): void {
  for (const { edge, tiltDeg } of edges) {
    const [from, to] = [outline[edge], outline[(edge + 1) % outline.length]]
    if (tiltDeg <= 0.05 || from === undefined || to === undefined) continue
    file.line(gradedLayer('BEVEL', tiltDeg), placed(from.uM, from.vM), placed(to.uM, to.vM))
  }
}

/** Both sides of every strip on which something stands, and the pilots of its screws; each copy has its own. */
function addMarks(file: DxfFile, marks: readonly PanelMark[], thicknessM: number, placed: Placed): void {
  const { pilotMm } = screwSizeFor(thicknessM)
  for (const { from, to, widthM, screws } of marks) {
    const length = Math.hypot(to.uM - from.uM, to.vM - from.vM)
    const aside = { uM: ((from.vM - to.vM) / length) * (widthM / 2), vM: ((to.uM - from.uM) / length) * (widthM / 2) }
    for (const sign of [1, -1]) {
      const [a, b] = mapped([from, to], ({ uM, vM }) => placed(uM + sign * aside.uM, vM + sign * aside.vM))
      file.line('MARK', a, b)
    }
    for (const { uM, vM } of screws) {
      const { x, y } = placed(uM, vM)
      file.circle(gradedLayer('DRILL', pilotMm), x, y, pilotMm / 2)
    }
  }
}

/** Text is at least so high that it can be read [mm]; on a part that is too small for it it runs over, on a layer that is not cut. */
const LEAST_TEXT = 3
const MOST_TEXT = 14

/** In the lower left corner, along the longer side. */
function addWords(file: DxfFile, lines: readonly string[], panel: Panel, placed: Placed): void {
  const { u, v } = reachOf(panel)
  const [one, other] = [placed(0, 0), placed(u, v)]
  const [left, right] = [Math.min(one.x, other.x), Math.max(one.x, other.x)]
  const [low, high] = [Math.min(one.y, other.y), Math.max(one.y, other.y)]
  const upright = high - low > right - left
  const [long, short] = upright ? [high - low, right - left] : [right - left, high - low]
  const longest = Math.max(...lines.map(({ length }) => length))
  const fits = Math.min(long / (0.75 * Math.max(1, longest) + 2), short / (1.5 * lines.length + 1))
  const height = Math.max(LEAST_TEXT, Math.min(MOST_TEXT, fits))
  lines.forEach((text, i) => {
    const [along, across] = [height * 0.8, height * (0.8 + 1.5 * i)]
    // Turned by a quarter its lines stand to the left of one another.
    if (upright) file.text(left + short - across, low + along, height, text, true)
    else file.text(left + along, low + across, height, text)
  })
}

/** What no contour tells: edges sawn at a tilt, by number from the lower left corner, and the depth of rebates. */
function tiltNotes(panel: Panel): readonly string[] {
  const { outline, edges, cutOuts } = panel
  const innerUp = liesInnerUp(panel)
  // Turned over, the edges are met the other way round.
  const numberOf = (edge: number) => (innerUp ? (outline.length - edge) % outline.length : edge) + 1
  const tilts = edges
    .filter(({ tiltDeg }) => tiltDeg > 0.05)
    .map(
      ({ edge, tiltDeg, longFace }) =>
        `edge ${numberOf(edge)}: saw at ${Math.round(tiltDeg * 10) / 10} deg, ${longFace} face long`
    )
  const rebates = cutOuts.flatMap(({ rebateDepthM, face }) => {
    if (rebateDepthM === undefined) return []
    const turned = innerUp && face !== 'inner' ? ' from the other face' : ''
    return [`pocket ${Math.round(rebateDepthM * 1e4) / 10} deep${turned}`]
  })
  return [...new Set([...(innerUp ? ['inner face up'] : []), ...rebates, ...tilts])]
}

const titleOf = ({ name, lengthM, widthM, thicknessM }: Panel, copy: string) =>
  `${name}${copy} ${Math.round(lengthM * 1e4) / 10} x ${Math.round(widthM * 1e4) / 10} x ${Math.round(thicknessM * 1e4) / 10}`

const wordsFor = (routing: Routing | undefined) =>
  routing?.tabs === true ? `, tabs ${tabRule.long} x ${tabRule.high}` : ''

/** Every kind of panel once, side by side, its outer face up but where joints are sunk into the inner one, the number wanted in its text. */
export function panelsDxf(panels: readonly Panel[], routing?: Routing): string {
  const file = dxfFile()
  const gap = 60
  let left = 0
  for (const panel of panels.flatMap(drawnApart)) {
    const from = left
    const copies = panel.quantity === 1 ? '' : ` (${panel.quantity} off${isMirrored(panel) ? ', one mirrored' : ''})`
    const innerUp = liesInnerUp(panel)
    const { u } = reachOf(panel)
    const placed: Placed = (uM, vM) => ({ x: from + (innerUp ? u - uM : uM) * 1000, y: vM * 1000 })
    addPanel(file, panel, { title: titleOf(panel, copies), placed, quarterTurned: false, innerUp }, routing)
    addMarks(file, marksOn(panel), panel.thicknessM, placed)
    left += reachOf(panel).u * 1000 + gap
  }
  return file.end()
}

/** The panel as it lies on its sheet: turned by a quarter where its u runs along the width, mirrored where its twin is. */
function onSheet(panel: Panel, piece: LaidPiece, left: number) {
  const { u, v } = reachOf(panel)
  const [x, y] = [left + piece.xM * 1000, piece.yM * 1000]
  const quarterTurned = (panel.lengthAlong === 'u') === piece.turned
  /** In the frame of this very copy. */
  const own: Placed = (uM, vM) =>
    quarterTurned ? { x: x + (v - vM) * 1000, y: y + uM * 1000 } : { x: x + uM * 1000, y: y + vM * 1000 }
  const innerUp = liesInnerUp(panel)
  const seen: Placed = innerUp ? (uM, vM) => own(u - uM, vM) : own
  const mirror = isMirrored(panel) && piece.copy % 2 === 0
  const placed: Placed = mirror ? (uM, vM) => seen(u - uM, vM) : seen
  return { own: seen, placed, quarterTurned, innerUp }
}

/** The sheets of a cut plan side by side, every panel with its holes where it lies, outer face up. */
export function sheetsDxf(panels: readonly Panel[], { layouts }: SheetPlan, routing?: Routing): string {
  const file = dxfFile()
  const gap = 200
  let left = 0
  for (const layout of layouts) {
    const [width, height] = [layout.lengthM * 1000, layout.widthM * 1000]
    file.contour('SHEET', roundedRectangle(left + width / 2, height / 2, width, height, 0))
    file.text(left, height + 20, 30, `sheet ${layout.number}: ${layout.sheet}${wordsFor(routing)}`)
    for (const piece of layout.pieces) {
      const panel = panels.find(({ name }) => name === piece.panel)
      if (panel === undefined) continue
      const { own, ...laid } = onSheet(panel, piece, left)
      const title = titleOf(panel, panel.quantity > 1 ? ` ${piece.copy}` : '')
      addPanel(file, panel, { title, ...laid }, routing)
      addMarks(file, panel.copies?.[piece.copy - 1]?.marks ?? [], panel.thicknessM, own)
    }
    left += width + gap
  }
  return file.end()
}
