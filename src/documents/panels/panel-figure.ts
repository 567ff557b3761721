/** One panel drawn to scale in millimetres of paper: outline, holes, centres, dimensions. Seen from outside, v upwards. */
import type { PanelPoint } from '../../contract/boxes/box-hardware.ts'
import type { Panel } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { clearTexts, type Drawn, drawnLine, type PlacedText, type Spot, type TextPlace } from '../draw/clear-texts.ts'
import { dimension, figure } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'
import { alongU, alongV, line, type PanelExtent, type PanelFrame, stroke, toX, toY } from './dimension-lines.ts'
import { centreMark, drawnHoles, holeLabel, holeShape, sameCentre, screwHoles } from './panel-holes.ts'
import { drawnBlank, numberedCuts } from './panel-joints.ts'
import { drawnMarks, edgeStripM, markNames, panelMarks, uprightTurn } from './panel-marks.ts'

/** Space round a panel for its dimensions [mm of paper]. */
export const margin = { left: 16, right: 12, top: 12, bottom: 16 } as const

export function extentOf({ outline }: Panel): PanelExtent {
  return { uM: Math.max(...outline.map(({ uM }) => uM)), vM: Math.max(...outline.map(({ vM }) => vM)) }
}

function outlineOf(outline: readonly PanelPoint[], frame: PanelFrame): string {
  const points = outline.map(({ uM, vM }) => `${toX(uM, frame).toFixed(2)},${toY(vM, frame).toFixed(2)}`).join(' ')
  return element('polygon', {
    points,
    fill: ink.wood,
    class: 'wood',
    stroke: ink.text,
    'stroke-width': line.thick,
    'stroke-linejoin': 'round'
  })
}

const drawnOutline = ({ outline }: Panel, frame: PanelFrame): readonly Drawn[] => {
  const spots = outline.map(({ uM, vM }) => ({ x: toX(uM, frame), y: toY(vM, frame) }))
  return spots.map((spot, i) => drawnLine(spot, spots[(i + 1) % spots.length] ?? spot))
}

/** Distance between dimension lines. */
const step = 4.6

const distinct = (values: readonly number[]) =>
  [...new Set(values.map(value => Math.round(value * 1e5) / 1e5))].sort((a, b) => a - b)

/** Places of all centres from the lower left corner, each value once, on lines that step outwards. */
function centreDimensions(panel: Panel, frame: PanelFrame, extent: PanelExtent): string {
  const us = distinct(numberedCuts(panel).map(({ uM }) => uM))
  const vs = distinct(numberedCuts(panel).map(({ vM }) => vM))
  const [top, right] = [toY(extent.vM, frame), toX(extent.uM, frame)]
  const above = us.map((uM, index) => alongU(0, uM, top - 4 - step * index, frame, top))
  const beside = vs.map((vM, index) => alongV(0, vM, right + 5 + step * index, frame, right))
  return [...above, ...beside].join('')
}

/** Corners of the outline that are not those of the blank. */
function cornerPlaces({ outline }: Panel, extent: PanelExtent) {
  const inside = (values: readonly number[], full: number) =>
    distinct(values).filter(value => value > 5e-4 && value < full - 5e-4)
  return {
    below: inside(
      outline.map(({ uM }) => uM),
      extent.uM
    ),
    beside: inside(
      outline.map(({ vM }) => vM),
      extent.vM
    )
  }
}

/** Overall size outermost, the corners in between nearer to the panel. */
function outlineDimensions(panel: Panel, frame: PanelFrame, extent: PanelExtent): string {
  const { below, beside } = cornerPlaces(panel, extent)
  const [bottom, left] = [toY(0, frame), toX(0, frame)]
  return [
    ...[...below, extent.uM].map((uM, index) => alongU(0, uM, bottom + 6 + step * index, frame, bottom)),
    ...[...beside, extent.vM].map((vM, index) => alongV(0, vM, left - 6 - step * index, frame, left))
  ].join('')
}

/** Notes along an edge stand clear of the strip of what stands on it. */
const noteDepth = (panel: Panel, { perM }: PanelFrame) => Math.max(3, edgeStripM(panel) * perM + 2.4)

/** Shares of an edge at which a note is tried. */
const tryShares = [0.5, 0.3, 0.7, 0.15, 0.85]

/** Inside an edge, as near to it as `by` first. */
function besideEdge(from: PanelPoint, to: PanelPoint, frame: PanelFrame, by: number): readonly TextPlace[] {
  const [a, b] = [from, to].map(({ uM, vM }) => ({ x: toX(uM, frame), y: toY(vM, frame) })) as [Spot, Spot]
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const turn = uprightTurn(a, b)
  return [by, by + line.text + 1].flatMap(depth =>
    tryShares.map(share => ({
      x: a.x + share * (b.x - a.x) + (depth * (b.y - a.y)) / length,
      y: a.y + share * (b.y - a.y) - (depth * (b.x - a.x)) / length,
      turn
    }))
  )
}

/** Lengths of slanted edges, written inside along them. */
function slantedEdges(panel: Panel, frame: PanelFrame): readonly PlacedText[] {
  const { outline } = panel
  return outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length] as PanelPoint
    const [du, dv] = [to.uM - from.uM, to.vM - from.vM]
    if (Math.abs(du) < 5e-4 || Math.abs(dv) < 5e-4) return []
    const places = besideEdge(from, to, frame, noteDepth(panel, frame) + 4)
    return [{ text: dimension(Math.hypot(du, dv), frame.paper), places, style: { size: line.text } }]
  })
}

/** Space that the centre dimensions of a panel need above and beside it. */
export function centreSpace(panel: Panel): { readonly above: number; readonly beside: number } {
  const cutOuts = numberedCuts(panel)
  const count = (values: readonly number[]) => new Set(values.map(value => Math.round(value * 1e5))).size
  return { above: step * count(cutOuts.map(({ uM }) => uM)), beside: step * count(cutOuts.map(({ vM }) => vM)) }
}

/** Space that the corners of an outline need below and to the left, past the margin that holds the overall size and one of them. */
export function cornerSpace(panel: Panel): { readonly below: number; readonly left: number } {
  const { below, beside } = cornerPlaces(panel, extentOf(panel))
  return { below: step * Math.max(0, below.length - 1), left: step * Math.max(0, beside.length - 1) }
}

function edgeNotes(panel: Panel, frame: PanelFrame): readonly PlacedText[] {
  const { outline, edges } = panel
  const { language } = frame.paper
  return edges
    .filter(({ tiltDeg, roundingRadiusM }) => Math.abs(tiltDeg) > 0.05 || roundingRadiusM !== undefined)
    .map(({ edge, tiltDeg, longFace, roundingRadiusM }) => {
      const from = outline[edge] as PanelPoint
      const to = outline[(edge + 1) % outline.length] as PanelPoint
      const notes = [
        ...(Math.abs(tiltDeg) > 0.05
          ? [told(language, `draw.saw-${longFace}-long`, { angle: figure(Math.abs(tiltDeg), 1, frame.paper) })]
          : []),
        ...(roundingRadiusM === undefined
          ? []
          : [told(language, 'draw.round', { radius: dimension(roundingRadiusM, frame.paper) })])
      ]
      const style = { size: line.small, colour: ink.limit, className: 'limit-text' }
      return { text: notes.join(', '), places: besideEdge(from, to, frame, noteDepth(panel, frame)), style }
    })
}

/** Grain as an arrow in the lower right of the panel. */
function grainArrow({ grain, lengthAlong }: Panel, frame: PanelFrame, extent: PanelExtent): string {
  if (grain === 'any') return ''
  const alongUAxis = (grain === 'length') === (lengthAlong === 'u')
  const [x, y] = [toX(extent.uM, frame) - 10, toY(0, frame) - 6]
  const [dx, dy] = alongUAxis ? [7, 0] : [0, -7]
  const head = alongUAxis
    ? [
        [-1.5, -0.9],
        [-1.5, 0.9]
      ]
    : [
        [-0.9, 1.5],
        [0.9, 1.5]
      ]
  return (
    stroke(x, y, x + dx, y + dy, 0.3, ink.quiet, 'thin') +
    head.map(([hx = 0, hy = 0]) => stroke(x + dx, y + dy, x + dx + hx, y + dy + hy, 0.3, ink.quiet, 'thin')).join('') +
    textAt(x - 1, y + 3, told(frame.paper.language, 'draw.grain'), {
      size: line.small,
      anchor: 'start',
      colour: ink.quiet,
      className: 'quiet'
    })
  )
}

export function panelFigure(panel: Panel, frame: PanelFrame): string {
  const extent = extentOf(panel)
  const cuts = numberedCuts(panel)
  return [
    outlineOf(drawnBlank(panel), frame),
    panelMarks(panel, frame, extent),
    ...cuts.map(cutOut => holeShape(cutOut, frame) + screwHoles(cutOut, frame)),
    ...cuts.map(cutOut => centreMark(cutOut, frame)),
    ...cuts.map((cutOut, index) => holeLabel(cutOut, index + 1, frame, sameCentre(cuts, index))),
    outlineDimensions(panel, frame, extent),
    centreDimensions(panel, frame, extent),
    clearTexts(
      [...slantedEdges(panel, frame), ...edgeNotes(panel, frame), ...markNames(panel, frame, extent)],
      [...drawnOutline(panel, frame), ...drawnMarks(panel, frame, extent), ...drawnHoles(cuts, frame)]
    ),
    grainArrow(panel, frame, extent)
  ].join('')
}
