/** The drawing of one sheet: panels where they lie, numbered cuts, offcuts hatched, and the cuts as a list. */
import type { Offcut, SheetCut, SheetLayout } from '../../contract/boxes/box-sheets.ts'
import { told } from '../../domain/say.ts'
import { type Drawn, drawnDisc, type Spot } from '../draw/clear-texts.ts'
import { dimension, dimensionUnit, figure, lengthText, type Reader } from '../draw/number-text.ts'
import { sheetName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, svgDocument, textAt, textWidth } from '../draw/svg.ts'
import { columnWidth, cutList, type ListPlace, rowHeight } from '../panels/cut-list-text.ts'
import { type Drawing, materialTitle, type PaperSize, scaleFor } from '../panels/panel-drawing.ts'
import { drawnWords, fitted, pieceFigure, type SheetFrame } from './sheet-pieces.ts'

const margin = 8
/** Title block and the line above the sheet. */
const foot = 22

/** Offcuts carry slanted lines, so that they are told from panels without colour. */
function offcutFigure({ xM, yM, lengthM, widthM, reusable }: Offcut, frame: SheetFrame): string {
  const [w, h] = [lengthM * frame.perM, widthM * frame.perM]
  const [x, y] = [frame.x + xM * frame.perM, frame.y + yM * frame.perM]
  const lines: string[] = []
  for (let start = 3; start < w + h; start += 3) {
    const [x1, y1] = start <= h ? [x, y + start] : [x + start - h, y + h]
    const [x2, y2] = start <= w ? [x + start, y] : [x + w, y + start - w]
    lines.push(element('line', { x1, y1, x2, y2, stroke: ink.hatch, class: 'hatch', 'stroke-width': 0.2 }))
  }
  const text = `${dimension(lengthM, frame.paper)} × ${dimension(widthM, frame.paper)}`
  const size = fitted(text, w, 2.6)
  const label = reusable && size !== undefined && h > 5
  const plate = label
    ? element('rect', {
        x: x + w / 2 - textWidth(text, size) / 2 - 1,
        y: y + h / 2 - 3,
        width: textWidth(text, size) + 2,
        height: 4.6,
        fill: ink.paper,
        class: 'paper'
      }) + textAt(x + w / 2, y + h / 2 + 0.4, text, { size, anchor: 'middle', colour: ink.quiet, className: 'quiet' })
    : ''
  return lines.join('') + plate
}

/** A cut with its number, which stands on it where it covers neither words nor another number: at its start if it can. */
function cutFigure({ step, along, atM, fromM, toM }: SheetCut, frame: SheetFrame, drawn: Drawn[]): string {
  const at = atM * frame.perM
  const [from, to] = [fromM * frame.perM, toM * frame.perM]
  const onCut = (share: number): Spot => {
    const way = from + share * (to - from)
    return along === 'length' ? { x: frame.x + way, y: frame.y + at } : { x: frame.x + at, y: frame.y + way }
  }
  const radius = to - from < 12 ? 1.6 : 2.1
  const covered = (spot: Spot) => drawn.filter(isNear => isNear(spot, radius)).length
  const spots = numberShares.map(onCut)
  const number = spots.find(spot => covered(spot) === 0) ?? spots.reduce((a, b) => (covered(b) < covered(a) ? b : a))
  drawn.push(drawnDisc(number, radius))
  const [start, end] = [onCut(0), onCut(1)]
  const ends = { x1: start.x, y1: start.y, x2: end.x, y2: end.y }
  return (
    element('line', { ...ends, stroke: ink.cut, class: 'cut', 'stroke-width': 0.45 }) +
    element('circle', { cx: number.x, cy: number.y, r: radius, fill: ink.cut, class: 'bubble' }) +
    textAt(number.x, number.y + 0.37 * radius, String(step), {
      size: step > 99 ? 1.7 : 1.05 * radius,
      anchor: 'middle',
      colour: ink.paper,
      className: 'bubble-text',
      bold: true
    })
  )
}

/** Shares of a cut at which its number is tried. */
const numberShares = [0, 1, 0.12, 0.88, 0.25, 0.75, 0.4, 0.6, 0.5]

function sheetFoot(layout: SheetLayout, paper: Reader, scale: number, size: PaperSize): string {
  const y = size.height - 15
  const { language } = paper
  const trim = layout.trimM > 0 ? told(language, 'paper.trim-first', { trim: lengthText(layout.trimM, paper) }) : ''
  const sides = [layout.lengthM, layout.widthM, layout.thicknessM].map(side => lengthText(side, paper)).join(' × ')
  const used = { scale: figure(scale, 1, paper), used: figure(layout.usedPercent, 1, paper) }
  return [
    element('line', { x1: 0, x2: size.width, y1: y, y2: y, stroke: ink.text, class: 'ink-line', 'stroke-width': 0.4 }),
    textAt(
      4,
      y + 6.2,
      told(language, 'draw.sheet-named', { number: layout.number, name: sheetName(layout.sheet, paper) }),
      {
        size: 4.4,
        bold: true
      }
    ),
    textAt(4, y + 11.4, layout.material === undefined ? sides : `${sides}, ${materialTitle(layout.material, paper)}`, {
      size: 3
    }),
    textAt(size.width - 4, y + 6.2, told(language, 'draw.sheet-scale', used), {
      size: 3,
      anchor: 'end'
    }),
    textAt(size.width - 4, y + 11.4, told(language, 'draw.sheet-foot', { unit: dimensionUnit(paper), trim }), {
      size: 2.6,
      anchor: 'end',
      colour: ink.quiet,
      className: 'quiet'
    })
  ].join('')
}

const sheetDescription = (layout: SheetLayout, paper: Reader) =>
  told(paper.language, 'draw.sheet-words', {
    number: layout.number,
    name: sheetName(layout.sheet, paper),
    pieceCount: layout.pieces.length,
    cutCount: layout.cuts.length,
    restCount: layout.offcuts.filter(({ reusable }) => reusable).length
  })

interface Arrangement {
  readonly scale: number
  readonly list: ListPlace
}

/** The list goes where it leaves the sheet the larger scale. */
function arrangementOf({ lengthM, widthM, cuts }: SheetLayout, size: PaperSize): Arrangement {
  const height = size.height - 2 * margin - foot
  const beside = scaleFor(lengthM, widthM, { width: size.width - columnWidth - 3 * margin, height })
  const columns = 2
  const rows = Math.max(1, Math.ceil(cuts.length / columns))
  const below = scaleFor(lengthM, widthM, { width: size.width - 2 * margin, height: height - 12 - rows * rowHeight })
  if (below >= beside) {
    const x = Math.min(size.width - columnWidth - margin, margin + (lengthM * 1000) / beside + 5)
    return {
      scale: beside,
      list: {
        x,
        y: 14,
        columns: 1,
        rows: Math.floor((size.height - 44) / rowHeight),
        width: size.width - margin - x
      }
    }
  }
  const y = margin + 8 + (widthM * 1000) / below + 9
  return { scale: below, list: { x: margin, y, columns, rows, width: (size.width - 2 * margin - 5) / 2 } }
}

/** @param id  unique on a page */
export function cutSheet(layout: SheetLayout, id: string, paper: Reader, size: PaperSize): Drawing {
  const { scale, list } = arrangementOf(layout, size)
  const perM = 1000 / scale
  const frame: SheetFrame = { x: margin, y: margin + 6, perM, paper }
  const drawn = layout.pieces.flatMap(piece => [...drawnWords(piece, frame)])
  const svg = svgDocument(
    {
      id,
      title: told(paper.language, 'draw.cut-sheet', { number: layout.number }),
      description: sheetDescription(layout, paper)
    },
    { ...size, unit: 'mm' },
    textAt(frame.x, 10.5, told(paper.language, 'draw.sheet-length'), {
      size: 2.6,
      colour: ink.quiet,
      className: 'quiet'
    }),
    rectangle(frame, 0, layout, { fill: ink.paper, class: 'paper-shape', stroke: ink.text, 'stroke-width': 0.6 }),
    ...layout.offcuts.map(offcut => offcutFigure(offcut, frame)),
    ...layout.pieces.map(piece => pieceFigure(piece, frame)),
    rectangle(frame, layout.trimM, layout, {
      fill: 'none',
      stroke: ink.quiet,
      class: 'thin',
      'stroke-width': 0.2,
      'stroke-dasharray': '2 1.2'
    }),
    ...layout.cuts.map(cut => cutFigure(cut, frame, drawn)),
    cutList(layout.cuts, list, paper),
    sheetFoot(layout, paper, scale, size)
  )
  return {
    name: told(paper.language, 'draw.sheet-number', { number: layout.number }),
    svg,
    scale,
    widthM: size.width / 1000,
    heightM: size.height / 1000
  }
}

function rectangle(
  { x, y, perM }: SheetFrame,
  insetM: number,
  { lengthM, widthM }: SheetLayout,
  look: Readonly<Record<string, string | number>>
): string {
  return element('rect', {
    x: x + insetM * perM,
    y: y + insetM * perM,
    width: (lengthM - 2 * insetM) * perM,
    height: (widthM - 2 * insetM) * perM,
    ...look
  })
}
