/** Side sections of a panel whose edges are sawn at a tilt: the board on edge, its outer face below, to the scale of the panel. */
import type { Panel } from '../../contract/boxes/panel.ts'
import { told } from '../../domain/say.ts'
import { figure, type Reader } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'
import { line, type PanelFrame } from './dimension-lines.ts'
import { extentOf } from './panel-figure.ts'

/** Paper that one section takes beside the board itself, for its words [mm]. */
export const SECTION_WORDS = 8

type Edge = Panel['edges'][number]
const isTilted = (edge: Edge | undefined) => edge !== undefined && Math.abs(edge.tiltDeg) > 0.05

interface Section {
  readonly lengthM: number
  /** At the left and at the right end of the drawing. */
  readonly ends: readonly [Edge | undefined, Edge | undefined]
  readonly name: 'upright' | 'across'
}

/** Of a part with four corners: across its height, across its width. */
export function sectionsOf(panel: Panel): readonly Section[] {
  if (panel.outline.length !== 4) return []
  const at = (edge: number) => panel.edges.find(each => each.edge === edge)
  const { uM, vM } = extentOf(panel)
  return [
    { lengthM: vM, ends: [at(0), at(2)] as const, name: 'upright' as const },
    { lengthM: uM, ends: [at(3), at(1)] as const, name: 'across' as const }
  ].filter(({ ends }) => ends.some(isTilted))
}

/** How far a face is drawn in at an end [m]. */
function drawnIn(edge: Edge | undefined, face: 'outer' | 'inner', thicknessM: number): number {
  if (edge === undefined || !isTilted(edge) || edge.longFace === face) return 0
  return thicknessM * Math.tan((Math.abs(edge.tiltDeg) * Math.PI) / 180)
}

const angleText = (edge: Edge | undefined, paper: Reader) =>
  edge !== undefined && isTilted(edge)
    ? told(paper.language, 'draw.saw-at', { angle: figure(Math.abs(edge.tiltDeg), 1, paper) })
    : told(paper.language, 'draw.square')

export function edgeSection(
  { lengthM, ends, name }: Section,
  panel: Panel,
  frame: PanelFrame,
  left: number,
  top: number
) {
  const { perM, paper } = frame
  const { thicknessM } = panel
  const [from, to, high] = [left, left + lengthM * perM, thicknessM * perM]
  const x = (end: 0 | 1, face: 'outer' | 'inner') => {
    const by = drawnIn(ends[end], face, thicknessM) * perM
    return end === 0 ? from + by : to - by
  }
  const corners = [
    [x(0, 'outer'), top + high],
    [x(1, 'outer'), top + high],
    [x(1, 'inner'), top],
    [x(0, 'inner'), top]
  ]
  return [
    element('polygon', {
      points: corners.map(([px = 0, py = 0]) => `${px.toFixed(2)},${py.toFixed(2)}`).join(' '),
      fill: ink.hatch,
      class: 'wood',
      stroke: ink.text,
      'stroke-width': 0.35
    }),
    textAt(from, top + high + 3.2, angleText(ends[0], paper), {
      size: line.small,
      colour: ink.limit,
      className: 'limit-text'
    }),
    textAt(to, top + high + 3.2, angleText(ends[1], paper), {
      size: line.small,
      anchor: 'end',
      colour: ink.limit,
      className: 'limit-text'
    }),
    textAt((from + to) / 2, top - 0.9, told(paper.language, `draw.section-${name}`), {
      size: line.small,
      anchor: 'middle',
      colour: ink.quiet,
      className: 'quiet'
    })
  ].join('')
}
