/** The drawing of one panel on a sheet of paper, with its title block and its list of holes. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { screwSizeFor } from '../../domain/box/assembly/joint-screws.ts'
import { boards } from '../../domain/material/boards.ts'
import { told } from '../../domain/say.ts'
import { dimension, dimensionUnit, figure, lengthText, massText, pilotText, type Reader } from '../draw/number-text.ts'
import { holeName, panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt } from '../draw/svg.ts'
import { edgeSection, SECTION_WORDS, sectionsOf } from './edge-sections.ts'
import { isMirrored } from './mirrored.ts'
import { centreSpace, cornerSpace, extentOf, margin, panelFigure } from './panel-figure.ts'
import { cutOutText } from './panel-holes.ts'
import { fingerRows, numberedCuts } from './panel-joints.ts'
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
export function materialTitle(material: string, { language }: Reader): string {
  if (!Object.hasOwn(boards, material)) return material
  return told(language, `draw.material.${material as keyof typeof boards}`)
}

/** @returns the largest of the usual scales at which it fits */
export function scaleFor(widthM: number, heightM: number, room: PaperSize): number {
  return (
    drawingScales.find(scale => (widthM * 1000) / scale <= room.width && (heightM * 1000) / scale <= room.height) ?? 100
  )
}

/** A round hole by its centre; a rectangle by its edges, to which it is sawn. */
function placeText({ kind, uM, vM, widthM = 0, heightM = 0 }: CutOut, paper: Reader): string {
  const at = (lengthM: number) => dimension(Math.max(0, lengthM), paper)
  const { language } = paper
  if (kind === 'circle') {
    return told(language, 'draw.at-centre', { across: lengthText(uM, paper), up: lengthText(vM, paper) })
  }
  const [right, top] = [lengthText(uM + widthM / 2, paper), lengthText(vM + heightM / 2, paper)]
  return told(language, 'draw.at-edges', { left: at(uM - widthM / 2), right, below: at(vM - heightM / 2), top })
}

export function holeRows(panel: Panel, paper: Reader): readonly string[] {
  const holes = numberedCuts(panel).map((cutOut, index) => {
    const [size, screws] = cutOutText(cutOut, paper)
    const place = placeText(cutOut, paper)
    const hole = `${index + 1}  ${holeName(cutOut, paper)}: ${size}, ${place}`
    return screws === undefined ? hole : told(paper.language, 'draw.hole-screwed', { hole, screws })
  })
  return [...holes, ...fingerRows(panel, paper)]
}

/** What the dashed strips and crosses say. */
function markRows(panel: Panel, paper: Reader): readonly string[] {
  const marks = marksOn(panel)
  if (marks.length === 0) return []
  const { diameterMm, lengthMm, pilotMm } = screwSizeFor(panel.thicknessM)
  const screws = marks.reduce((sum, mark) => sum + mark.screws.length, 0)
  return [
    told(paper.language, 'draw.mark-legend'),
    ...(screws === 0
      ? []
      : [
          told(paper.language, 'draw.mark-screws', {
            count: screws,
            pilot: pilotText(pilotMm / 1000, paper),
            screw: `${figure(diameterMm, 1, paper)} × ${figure(lengthMm, 0, paper)} mm`
          })
        ])
  ]
}

const insideRoles: readonly Panel['role'][] = ['brace', 'port-wall', 'divider', 'baffle-ring']
/** An inner part has no outside: its first face is the one that looks to the port or to the front. */
export function seenFrom({ role, name }: Panel, { language }: Reader): string {
  if (!insideRoles.includes(role)) return told(language, 'draw.seen.outside')
  if (role === 'divider') return told(language, 'draw.seen.front')
  return name.startsWith('port plate') ? told(language, 'draw.seen.channel') : told(language, 'draw.seen.first-face')
}

export const countText = (panel: Panel, { language }: Reader) => {
  const { quantity: count } = panel
  if (count === 1) return ''
  return isMirrored(panel) ? told(language, 'draw.off-mirrored', { count }) : told(language, 'draw.off', { count })
}

function titleBlock(panel: Panel, paper: Reader, scale: number, size: PaperSize): string {
  const y = size.height - block.height
  const facts = `${lengthText(panel.lengthM, paper)} × ${lengthText(panel.widthM, paper)} × ${lengthText(panel.thicknessM, paper)}, ${materialTitle(panel.material, paper)}`
  const { language } = paper
  const grain = panel.grain === 'any' ? told(language, 'draw.may-turn') : told(language, `draw.grain-${panel.grain}`)
  const about = { seen: seenFrom(panel, paper), grain, mass: massText(panel.massKg, paper), unit: dimensionUnit(paper) }
  return [
    element('line', { x1: 0, x2: size.width, y1: y, y2: y, stroke: ink.text, class: 'ink-line', 'stroke-width': 0.4 }),
    textAt(4, y + 6.2, panelName(panel.name, paper) + countText(panel, paper), {
      size: 4.4,
      bold: true
    }),
    textAt(4, y + 11.4, facts, { size: 3 }),
    textAt(size.width - 4, y + 6.2, told(language, 'draw.scale', { scale: figure(scale, 1, paper) }), {
      size: 3,
      anchor: 'end'
    }),
    textAt(size.width - 4, y + 11.4, told(language, 'draw.block', about), {
      size: 2.6,
      anchor: 'end',
      colour: ink.quiet,
      className: 'quiet'
    })
  ].join('')
}

function panelDescription(panel: Panel, paper: Reader): string {
  const { language } = paper
  return told(language, 'draw.panel-words', {
    name: panelName(panel.name, paper),
    count: panel.quantity,
    length: lengthText(panel.lengthM, paper),
    width: lengthText(panel.widthM, paper),
    thickness: lengthText(panel.thicknessM, paper),
    holes: panel.cutOuts.length === 0 ? told(language, 'draw.no-holes') : `${holeRows(panel, paper).join('. ')}.`
  })
}

/** @param id  unique on a page */
export function panelDrawing(panel: Panel, id: string, paper: Reader, size: PaperSize = a4Lying): Drawing {
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
    {
      id,
      title: told(paper.language, 'draw.panel-title', { name: panelName(panel.name, paper) }),
      description: panelDescription(panel, paper)
    },
    { ...size, unit: 'mm' },
    panelFigure(panel, frame),
    ...onEdge,
    ...list,
    titleBlock(panel, paper, scale, size)
  )
  return { name: panel.name, svg, scale, widthM: size.width / 1000, heightM: size.height / 1000 }
}
