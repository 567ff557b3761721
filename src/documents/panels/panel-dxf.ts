/** Panels and sheets as drawing exchange files for a router, a laser or a cutting service. */
import type { LaidPiece, SheetPlan } from '../../contract/boxes/box-sheets.ts'
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { isNotch, notchedFace } from '../../domain/box/shell/board-faces.ts'
import { type DxfFile, type DxfPoint, dxfFile } from '../draw/dxf.ts'
import { isMirrored } from './mirrored.ts'

/** From the frame of a panel [m] to the file [mm]. */
type Placed = (uM: number, vM: number) => DxfPoint

const quarterBulge = Math.tan(Math.PI / 8)

/** A rectangle about its centre, its corners rounded by arcs. Anticlockwise. */
function roundedRectangle(x: number, y: number, width: number, height: number, radius: number): readonly DxfPoint[] {
  const [w, h] = [width / 2, height / 2]
  const r = Math.max(0, Math.min(radius, w, h))
  if (r === 0)
    return [
      { x: x - w, y: y - h },
      { x: x + w, y: y - h },
      { x: x + w, y: y + h },
      { x: x - w, y: y + h }
    ]
  const bulge = quarterBulge
  return [
    { x: x - w + r, y: y - h },
    { x: x + w - r, y: y - h, bulge },
    { x: x + w, y: y - h + r },
    { x: x + w, y: y + h - r, bulge },
    { x: x + w - r, y: y + h },
    { x: x - w + r, y: y + h, bulge },
    { x: x - w, y: y + h - r },
    { x: x - w, y: y - h + r, bulge }
  ]
}

function addHole(file: DxfFile, cutOut: CutOut, placed: Placed, quarterTurned: boolean): void {
  const { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0, cornerRadiusM = 0, rebateDepthM, screwCircle } = cutOut
  const layer = rebateDepthM === undefined ? 'HOLES' : 'POCKET'
  const { x, y } = placed(uM, vM)
  const [width, height] = quarterTurned ? [heightM, widthM] : [widthM, heightM]
  if (kind === 'circle') file.circle(layer, x, y, (diameterM / 2) * 1000)
  else file.contour(layer, roundedRectangle(x, y, width * 1000, height * 1000, cornerRadiusM * 1000))
  if (screwCircle === undefined) return
  for (let index = 0; index < screwCircle.count; index++) {
    const angle = ((screwCircle.startAngleDeg + (360 * index) / screwCircle.count) * Math.PI) / 180
    const reach = screwCircle.diameterM / 2
    const screw = placed(uM + reach * Math.cos(angle), vM + reach * Math.sin(angle))
    file.circle('DRILL', screw.x, screw.y, (screwCircle.holeDiameterM / 2) * 1000)
  }
}

const reachOf = ({ outline }: Panel) => ({
  u: Math.max(...outline.map(({ uM }) => uM)),
  v: Math.max(...outline.map(({ vM }) => vM))
})

function addPanel(file: DxfFile, panel: Panel, title: string, placed: Placed, quarterTurned: boolean): void {
  // A notch is part of the outline, or its edge would be cut twice; tilts are said in words, the outline is the blank's.
  const outline = notchedFace({ ...panel, edges: [] }, 'outer')
  file.contour(
    'CUT',
    outline.map(({ x, y }) => placed(x, y))
  )
  const holes = panel.cutOuts.filter(cutOut => !isNotch(panel, cutOut))
  for (const cutOut of holes) addHole(file, cutOut, placed, quarterTurned)
  const { u, v } = reachOf(panel)
  const corners = [placed(0, 0), placed(u, v)]
  const [left, right] = corners.map(({ x }) => x).sort((a, b) => a - b) as [number, number]
  const low = Math.min(...corners.map(({ y }) => y))
  const lines = [...tiltNotes(panel), title]
  const longest = Math.max(...lines.map(({ length }) => length))
  const height = Math.min(14, (right - left) / (0.75 * Math.max(1, longest) + 2))
  if (height < 3) return
  lines.forEach((text, i) => {
    file.text(left + height * 0.8, low + height * (0.8 + 1.5 * i), height, text)
  })
}

/** What no contour tells: edges sawn at a tilt, by number from the lower left corner, and the depth of rebates. */
function tiltNotes({ edges, cutOuts }: Panel): readonly string[] {
  const tilts = edges
    .filter(({ tiltDeg }) => tiltDeg > 0.05)
    .map(
      ({ edge, tiltDeg, longFace }) =>
        `edge ${edge + 1}: saw at ${Math.round(tiltDeg * 10) / 10} deg, ${longFace} face long`
    )
  const rebates = cutOuts.flatMap(({ rebateDepthM }) =>
    rebateDepthM === undefined ? [] : [`pocket ${Math.round(rebateDepthM * 1e4) / 10} deep`]
  )
  return [...new Set([...rebates, ...tilts])]
}

const titleOf = ({ name, lengthM, widthM, thicknessM }: Panel, copy: string) =>
  `${name}${copy} ${Math.round(lengthM * 1e4) / 10} x ${Math.round(widthM * 1e4) / 10} x ${Math.round(thicknessM * 1e4) / 10}`

/** Every kind of panel once, side by side, its outer face up, the number wanted in its text. */
export function panelsDxf(panels: readonly Panel[]): string {
  const file = dxfFile()
  const gap = 60
  let left = 0
  for (const panel of panels) {
    const from = left
    const copies = panel.quantity === 1 ? '' : ` (${panel.quantity} off${isMirrored(panel) ? ', one mirrored' : ''})`
    addPanel(file, panel, titleOf(panel, copies), (uM, vM) => ({ x: from + uM * 1000, y: vM * 1000 }), false)
    left += reachOf(panel).u * 1000 + gap
  }
  return file.end()
}

/** The panel as it lies on its sheet: turned by a quarter where its u runs along the width, mirrored where its twin is. */
function onSheet(panel: Panel, piece: LaidPiece, left: number): { placed: Placed; quarterTurned: boolean } {
  const { u, v } = reachOf(panel)
  const mirror = isMirrored(panel) && piece.copy % 2 === 0
  const along = (uM: number) => (mirror ? u - uM : uM)
  const [x, y] = [left + piece.xM * 1000, piece.yM * 1000]
  const quarterTurned = (panel.lengthAlong === 'u') === piece.turned
  return {
    quarterTurned,
    placed: (uM, vM) =>
      quarterTurned
        ? { x: x + (v - vM) * 1000, y: y + along(uM) * 1000 }
        : { x: x + along(uM) * 1000, y: y + vM * 1000 }
  }
}

/** The sheets of a cut plan side by side, every panel with its holes where it lies, outer face up. */
export function sheetsDxf(panels: readonly Panel[], { layouts }: SheetPlan): string {
  const file = dxfFile()
  const gap = 200
  let left = 0
  for (const layout of layouts) {
    const [width, height] = [layout.lengthM * 1000, layout.widthM * 1000]
    file.contour('SHEET', roundedRectangle(left + width / 2, height / 2, width, height, 0))
    file.text(left, height + 20, 30, `sheet ${layout.number}: ${layout.sheet}`)
    for (const piece of layout.pieces) {
      const panel = panels.find(({ name }) => name === piece.panel)
      if (panel === undefined) continue
      const { placed, quarterTurned } = onSheet(panel, piece, left)
      addPanel(file, panel, titleOf(panel, panel.quantity > 1 ? ` ${piece.copy}` : ''), placed, quarterTurned)
    }
    left += width + gap
  }
  return file.end()
}
