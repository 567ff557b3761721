/** A panel with its holes as the page shows it: seen from outside, overall sizes, a number at each hole; the figures stand beside it as text. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { dimension, lengthText, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import type { PanelFrame } from './dimension-lines.ts'
import { toX, toY } from './dimension-lines.ts'
import { holeRows } from './panel-drawing.ts'
import { extentOf } from './panel-figure.ts'
import { holeShape, screwHoles } from './panel-holes.ts'
import { drawnBlank, numberedCuts } from './panel-joints.ts'
import { letteredMarks } from './panel-marks.ts'

const WIDTH = 340
/** Highest figure: a panel that stands must not fill a phone. */
const MOST_HIGH = 230
const LEFT = 34
const TOP = 26
const SCALE_BAR_M = 0.1

/** The number beside the centre mark, clear of it. */
function mark({ uM, vM }: CutOut, number: number, frame: PanelFrame): string {
  const [x, y] = [toX(uM, frame), toY(vM, frame)]
  const cross = [
    { x1: x - 6, x2: x + 6, y1: y, y2: y },
    { x1: x, x2: x, y1: y - 6, y2: y + 6 }
  ].map(ends => element('line', { ...ends, stroke: ink.cut, class: 'centre', 'stroke-width': 0.7 }))
  return (
    cross.join('') +
    textAt(x + 5, y - 5, String(number), { size: 12, colour: ink.cut, className: 'cut-text', bold: true })
  )
}

function overall(
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
  frame: PanelFrame
): string {
  const [x1, x2] = [toX(0, frame), toX(lengthM, frame)]
  const [y1, y2] = [toY(widthM, frame), toY(0, frame)]
  const ticks = [
    { x1, x2, y1: y1 - 9, y2: y1 - 9 },
    { x1, x2: x1, y1: y1 - 12, y2: y1 - 6 },
    { x1: x2, x2, y1: y1 - 12, y2: y1 - 6 },
    { x1: x1 - 9, x2: x1 - 9, y1, y2 },
    { x1: x1 - 12, x2: x1 - 6, y1, y2: y1 },
    { x1: x1 - 12, x2: x1 - 6, y1: y2, y2 }
  ].map(ends => element('line', { ...ends, stroke: ink.text, class: 'ink-line', 'stroke-width': 0.8 }))
  return [
    ...ticks,
    textAt((x1 + x2) / 2, y1 - 13, dimension(lengthM, frame.paper), { size: 12, anchor: 'middle' }),
    textAt(x1 - 13, (y1 + y2) / 2, dimension(widthM, frame.paper), { size: 12, anchor: 'middle', turn: -90 })
  ].join('')
}

/** @param id  unique on a page */
export function pagePanel(panel: Panel, id: string, paper: Reader): string {
  const { uM, vM } = extentOf(panel)
  const perM = Math.min((WIDTH - LEFT - 8) / uM, (MOST_HIGH - TOP) / vM)
  const bottom = TOP + vM * perM
  const frame: PanelFrame = { x: LEFT, y: bottom, perM, paper }
  const outline = drawnBlank(panel)
    .map(point => `${toX(point.uM, frame).toFixed(1)},${toY(point.vM, frame).toFixed(1)}`)
    .join(' ')
  const bar = bottom + 14
  return svgDocument(
    {
      id,
      title: told(paper.language, 'draw.panel-title', { name: panelName(panel.name, paper) }),
      description: holeRows(panel, paper).join('. ')
    },
    { width: WIDTH, height: bar + 8 },
    element('polygon', { points: outline, fill: ink.wood, class: 'wood', stroke: ink.text, 'stroke-width': 1 }),
    letteredMarks(panel, frame),
    ...numberedCuts(panel).map(hole => holeShape(hole, frame) + screwHoles(hole, frame)),
    ...numberedCuts(panel).map((hole, index) => mark(hole, index + 1, frame)),
    overall({ lengthM: uM, widthM: vM }, frame),
    element('line', {
      x1: LEFT,
      x2: LEFT + SCALE_BAR_M * perM,
      y1: bar,
      y2: bar,
      stroke: ink.text,
      class: 'ink-line',
      'stroke-width': 3
    }),
    textAt(LEFT + SCALE_BAR_M * perM + 6, bar + 4, lengthText(SCALE_BAR_M, paper), {
      size: 11,
      colour: ink.quiet,
      className: 'quiet'
    })
  )
}
