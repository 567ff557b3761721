/** The drawing of one panel on a sheet of paper, with its title block and its list of holes. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { screwSizeFor } from '../../domain/box/assembly/joint-screws.ts'
import { boards } from '../../domain/material/boards.ts'
import { dimension, dimensionUnit, lengthText, massText, type PaperUnits, pilotText } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import { edgeSection, SECTION_WORDS, sectionsOf } from './edge-sections.ts'
import { isMirrored } from './mirrored.ts'
import { centreSpace, cornerSpace, extentOf, margin, panelFigure } from './panel-figure.ts'
import { cutOutText } from './panel-holes.ts'
import { marksOn } from './panel-marks.ts'

/** Scales as 1 to this. */
const drawingScales = [1, 2, 2.5, 4, 5, 8, 10, 12.5, 15, 20, 25, 40, 50] as const

export interface PaperSize {
  /** [mm] */
  readonly width: number
  readonly height: number
}
/** A4 lying, less 10 mm for what a printer cannot reach. */
export const a4Lying: PaperSize = { width: 277, height: 190 }

export interface Drawing {
  readonly name: string
  readonly svg: string
  /** 1 to this. */
  readonly scale: number
  /** Of the drawing [mm of paper]. */
  readonly widthM: number
  readonly heightM: number
}

const block = { height: 15, row: 4.4 } as const

/** The name of a material without its grade; a caller's own id as it stands. */
export function materialTitle(material: string): string {
  const title = Object.hasOwn(boards, material) ? boards[material as keyof typeof boards].title : material
  return title.split(',')[0] ?? title
}

/** @returns the largest of the usual scales at which it fits */
export function scaleFor(widthM: number, heightM: number, room: PaperSize): number {
  return (
    drawingScales.find(scale => (widthM * 1000) / scale <= room.width && (heightM * 1000) / scale <= room.height) ?? 100
  )
}

/** A round hole by its centre; a rectangle by its edges, to which it is sawn. */
function placeText({ kind, uM, vM, widthM = 0, heightM = 0 }: CutOut, paper: PaperUnits): string {
  const at = (lengthM: number) => dimension(Math.max(0, lengthM), paper)
  if (kind === 'circle') return `centre ${lengthText(uM, paper)} from the left, ${lengthText(vM, paper)} from below`
  const [right, top] = [lengthText(uM + widthM / 2, paper), lengthText(vM + heightM / 2, paper)]
  return `${at(uM - widthM / 2)} to ${right} from the left, ${at(vM - heightM / 2)} to ${top} from below`
}

export function holeRows({ cutOuts }: Panel, paper: PaperUnits): readonly string[] {
  return cutOuts.map((cutOut, index) => {
    const [size, screws] = cutOutText(cutOut, paper)
    const place = placeText(cutOut, paper)
    return `${index + 1}  ${cutOut.label}: ${size}, ${place}${screws === undefined ? '' : `; screws ${screws}`}`
  })
}

/** What the dashed strips and crosses say. */
function markRows(panel: Panel, paper: PaperUnits): readonly string[] {
  const marks = marksOn(panel)
  if (marks.length === 0) return []
  const { diameterMm, lengthMm, pilotMm } = screwSizeFor(panel.thicknessM)
  const screws = marks.reduce((sum, mark) => sum + mark.screws.length, 0)
  return [
    `Dashed: what stands against the inner face, full line: against the outer; its middle so far from the left (→) or from below (↑) of this drawing, from the right where the board lies face down`,
    ...(screws === 0
      ? []
      : [
          `Crosses: ${screws} pilots ⌀${pilotText(pilotMm / 1000, paper)} right through for screws ${diameterMm} × ${lengthMm} mm`
        ])
  ]
}

const insideRoles: readonly Panel['role'][] = ['brace', 'port-wall', 'divider', 'baffle-ring']
/** An inner part has no outside: its first face is the one that looks to the port or to the front. */
export const seenFrom = ({ role, name }: Panel) =>
  !insideRoles.includes(role)
    ? 'seen from outside'
    : role === 'divider'
      ? 'seen from the front'
      : name.startsWith('port plate')
        ? 'seen from the channel'
        : 'seen from its first face'

export const countText = (panel: Panel) =>
  panel.quantity === 1 ? '' : ` (${panel.quantity} off${isMirrored(panel) ? ', one of them mirrored' : ''})`

function titleBlock(panel: Panel, paper: PaperUnits, scale: number, size: PaperSize): string {
  const y = size.height - block.height
  const facts = `${lengthText(panel.lengthM, paper)} × ${lengthText(panel.widthM, paper)} × ${lengthText(panel.thicknessM, paper)}, ${materialTitle(panel.material)}`
  const grain = panel.grain === 'any' ? 'may turn' : `grain along the ${panel.grain}`
  return [
    element('line', { x1: 0, x2: size.width, y1: y, y2: y, stroke: ink.text, class: 'ink-line', 'stroke-width': 0.4 }),
    textAt(4, y + 6.2, panel.name + countText(panel), {
      size: 4.4,
      bold: true
    }),
    textAt(4, y + 11.4, facts, { size: 3 }),
    textAt(size.width - 4, y + 6.2, `Scale 1:${scale} on paper of this size`, { size: 3, anchor: 'end' }),
    textAt(
      size.width - 4,
      y + 11.4,
      `${seenFrom(panel)}; ${grain}; ${massText(panel.massKg, paper)}; dimensions in ${dimensionUnit(paper)}`,
      { size: 2.6, anchor: 'end', colour: ink.quiet, className: 'quiet' }
    )
  ].join('')
}

function panelDescription(panel: Panel, paper: PaperUnits): string {
  const holes = panel.cutOuts.length === 0 ? 'No holes.' : `${holeRows(panel, paper).join('. ')}.`
  return `Panel ${panel.name}, ${panel.quantity} off, ${lengthText(panel.lengthM, paper)} by ${lengthText(panel.widthM, paper)}, ${lengthText(panel.thicknessM, paper)} thick. ${holes}`
}

/** @param id  unique on a page */
export function panelDrawing(panel: Panel, id: string, paper: PaperUnits, size: PaperSize = a4Lying): Drawing {
  const extent = extentOf(panel)
  const [space, corners] = [centreSpace(panel), cornerSpace(panel)]
  const rows = [...holeRows(panel, paper), ...markRows(panel, paper)]
  const sections = sectionsOf(panel)
  const text = block.height + rows.length * block.row + (rows.length > 0 ? 3 : 0)
  const roomAbove = (below: number) => ({
    width: size.width - margin.left - margin.right - space.beside - corners.left,
    height: size.height - margin.top - margin.bottom - space.above - corners.below - below
  })
  const asideAt = (scale: number) => sections.length * ((panel.thicknessM * 1000) / scale + SECTION_WORDS)
  const aside = asideAt(scaleFor(extent.uM, extent.vM, roomAbove(text)))
  const below = text + aside
  const room = roomAbove(below)
  const scale = scaleFor(extent.uM, extent.vM, room)
  const perM = 1000 / scale
  const width = extent.uM * perM
  const height = extent.vM * perM
  const frame = {
    perM,
    paper,
    x: margin.left + corners.left + (room.width - width) / 2,
    y: margin.top + space.above + (room.height + height) / 2
  }
  const firstRow = size.height - below + aside + 4
  const list = rows.map((row, index) => textAt(4, firstRow + index * block.row, row, { size: 2.7 }))
  const onEdge = sections.map((section, i) =>
    edgeSection(section, panel, frame, frame.x, size.height - below + 3 + (i * aside) / sections.length)
  )
  const svg = svgDocument(
    { id, title: `${panel.name}, panel drawing`, description: panelDescription(panel, paper) },
    { ...size, unit: 'mm' },
    panelFigure(panel, frame),
    ...onEdge,
    ...list,
    titleBlock(panel, paper, scale, size)
  )
  return { name: panel.name, svg, scale, widthM: size.width / 1000, heightM: size.height / 1000 }
}
