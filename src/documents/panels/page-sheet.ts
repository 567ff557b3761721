/** A sheet as the page shows it: panels, offcuts and cuts; names that fit a phone, numbers of cuts where there is room. */
import type { LaidPiece, Offcut, SheetCut, SheetLayout } from '../../contract/boxes/box-sheets.ts'
import { told } from '../../domain/say.ts'
import { mapped } from '../../numeric/tuple.ts'
import { dimension, lengthText, type Reader } from '../draw/number-text.ts'
import { panelName, sheetName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt, textWidth } from '../draw/svg.ts'

/** Units of the drawing: as many as a phone has pixels. */
const WIDTH = 340
const MARGIN = 6
const SCALE_BAR_M = 0.3

interface Frame {
  readonly perM: number
  readonly paper: Reader
}

const box = (frame: Frame, { xM, yM, lengthM, widthM }: Omit<Offcut, 'reusable'>) => ({
  x: MARGIN + xM * frame.perM,
  y: MARGIN + yM * frame.perM,
  width: lengthM * frame.perM,
  height: widthM * frame.perM
})

/** A text in the middle of a rectangle, upright where it only fits so; none where it fits neither way. */
function inside(
  text: string,
  size: number,
  { x, y, width, height }: ReturnType<typeof box>,
  className: string
): string {
  const wide = textWidth(text, size) * 0.92
  const turned = wide > width - 4 && wide < height - 4
  if ((wide > width - 4 && !turned) || Math.min(width, height) < size) return ''
  const [cx, cy] = [x + width / 2 + (turned ? size * 0.35 : 0), y + height / 2 + (turned ? 0 : size * 0.35)]
  return textAt(cx, cy, text, { size, anchor: 'middle', className, ...(turned ? { turn: -90 } : {}) })
}

/** Where the whole name finds no room, the part before the comma does, or a smaller one. */
function nameIn(name: string, copy: string, at: ReturnType<typeof box>): string {
  const short = `${name.split(', ')[0]}${copy}`
  return (
    inside(`${name}${copy}`, 13, at, 'ink name') ||
    inside(short, 13, at, 'ink name') ||
    inside(short, 9, at, 'ink name')
  )
}

function piece(each: LaidPiece, copies: number, frame: Frame): string {
  const at = box(frame, each)
  const own = panelName(each.panel, frame.paper)
  return (
    element('rect', { ...at, fill: ink.wood, class: 'wood', stroke: ink.text, 'stroke-width': 0.8 }) +
    nameIn(own, copies > 1 ? ` ${each.copy}` : '', at)
  )
}

function offcut(each: Offcut, frame: Frame): string {
  if (!each.reusable) return ''
  const { lengthM, widthM } = each
  return inside(
    `${dimension(lengthM, frame.paper)} × ${dimension(widthM, frame.paper)}`,
    11,
    box(frame, each),
    'quiet wide'
  )
}

function cut({ step, along, atM, fromM, toM }: SheetCut, { perM }: Frame): string {
  const [at, from, to] = mapped([atM, fromM, toM], value => MARGIN + value * perM)
  const [x1, y1, x2, y2] = along === 'length' ? [from, at, to, at] : [at, from, at, to]
  return (
    element('line', { x1, y1, x2, y2, stroke: ink.cut, class: 'cut', 'stroke-width': 1.2 }) +
    element('circle', { cx: x1, cy: y1, r: 5, fill: ink.cut, class: 'bubble wide' }) +
    textAt(x1, y1 + 2.3, String(step), {
      size: 6.5,
      anchor: 'middle',
      colour: ink.paper,
      className: 'bubble-text wide'
    })
  )
}

/** @param id  unique on a page */
export function pageSheet(layout: SheetLayout, id: string, paper: Reader): string {
  const { number, sheet, lengthM, widthM, pieces, offcuts, cuts } = layout
  const frame: Frame = { perM: (WIDTH - 2 * MARGIN) / lengthM, paper }
  const [wide, high] = [lengthM * frame.perM, widthM * frame.perM]
  const copies = (name: string) => pieces.filter(({ panel }) => panel === name).length
  const bar = MARGIN + high + 12
  return svgDocument(
    {
      id,
      title: told(paper.language, 'draw.sheet-named', { number, name: sheetName(sheet, paper) }),
      description: told(paper.language, 'draw.sheet-holds', {
        panels: pieces.map(({ panel }) => panelName(panel, paper)).join(', '),
        cutCount: cuts.length
      })
    },
    { width: WIDTH, height: bar + 8 },
    element('rect', {
      x: MARGIN,
      y: MARGIN,
      width: wide,
      height: high,
      fill: ink.paper,
      class: 'paper-shape',
      stroke: ink.text,
      'stroke-width': 1
    }),
    ...pieces.map(each => piece(each, copies(each.panel), frame)),
    ...offcuts.map(each => offcut(each, frame)),
    ...cuts.map(each => cut(each, frame)),
    element('line', {
      x1: MARGIN,
      x2: MARGIN + SCALE_BAR_M * frame.perM,
      y1: bar,
      y2: bar,
      stroke: ink.text,
      class: 'ink-line',
      'stroke-width': 3
    }),
    textAt(MARGIN + SCALE_BAR_M * frame.perM + 6, bar + 4, lengthText(SCALE_BAR_M, paper), {
      size: 11,
      colour: ink.quiet,
      className: 'quiet'
    })
  )
}
