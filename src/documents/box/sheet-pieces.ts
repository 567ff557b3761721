/** The panels on a sheet with their names, and where those words stand. */
import type { LaidPiece } from '../../contract/boxes/box-sheets.ts'
import { type Drawn, drawnBlock } from '../draw/clear-texts.ts'
import { dimension, type Reader } from '../draw/number-text.ts'
import { panelName } from '../draw/panel-name.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt, textWidth } from '../draw/svg.ts'

export interface SheetFrame {
  readonly x: number
  readonly y: number
  readonly perM: number
  readonly paper: Reader
}

/** The largest size at which a text fits a width; undefined when it would be unreadable. */
export function fitted(text: string, width: number, largest: number): number | undefined {
  const size = Math.min(largest, (width - 1.5) / (0.62 * [...text].length))
  return size >= 1.7 ? size : undefined
}

/** Room that the numbers of two cuts take [mm of paper]. */
const NUMBER_ROOM = 4

/** A line of the words on a piece: its base line lies `off` below the middle of the piece. */
interface NameLine {
  readonly text: string
  readonly size: number
  readonly bold: boolean
  readonly off: number
}

const isUpright = (w: number, h: number) => h > w * 1.4

/** A name in two lines where it does not fit in one: parts of a slot are small and have long names. */
function broken(name: string, along: number, across: number): readonly NameLine[] {
  const words = name.split(' ')
  const halves = words.slice(1).map((_, i) => [words.slice(0, i + 1).join(' '), words.slice(i + 1).join(' ')] as const)
  const longest = (texts: readonly string[]) => Math.max(...texts.map(text => [...text].length))
  const [first, ...rest] = halves
  if (first === undefined) return []
  const best = rest.reduce((a, b) => (longest(b) < longest(a) ? b : a), first)
  const size = fitted(best[0].length > best[1].length ? best[0] : best[1], along, Math.min(2.8, across / 2.6))
  if (size === undefined) return []
  return best.map((text, i) => ({ text, size, bold: true, off: (i === 0 ? -0.15 : 0.95) * size }))
}

function pieceLines({ panel, copy, lengthM, widthM }: LaidPiece, frame: SheetFrame): readonly NameLine[] {
  const [w, h] = [lengthM * frame.perM, widthM * frame.perM]
  const name = `${panelName(panel, frame.paper)} ${copy}`
  const size = `${dimension(lengthM, frame.paper)} × ${dimension(widthM, frame.paper)}`
  const [along, across] = isUpright(w, h) ? [h, w] : [w, h]
  // On a narrow piece the ends belong to the numbers of the cuts beside it.
  const nameSize = fitted(name, across > 8.5 ? along : along - NUMBER_ROOM, 3.6)
  const sizeSize = fitted(size, along, 2.8)
  if (nameSize === undefined) return broken(name, along, across)
  if (across > 8.5 && sizeSize !== undefined) {
    return [
      { text: name, size: nameSize, bold: true, off: -0.8 },
      { text: size, size: sizeSize, bold: false, off: 3.4 }
    ]
  }
  const only = Math.min(nameSize, across * 0.6)
  return across > 3 ? [{ text: name, size: only, bold: true, off: only * 0.35 }] : []
}

/** Where a piece lies on paper: its corner, its sides and the middle. */
function placeOf({ xM, yM, lengthM, widthM }: LaidPiece, frame: SheetFrame) {
  const [w, h] = [lengthM * frame.perM, widthM * frame.perM]
  const [x, y] = [frame.x + xM * frame.perM, frame.y + yM * frame.perM]
  return { x, y, w, h, middle: { x: x + w / 2, y: y + h / 2 } }
}

export function pieceFigure(piece: LaidPiece, frame: SheetFrame): string {
  const { x, y, w, h, middle } = placeOf(piece, frame)
  const shape = { x, y, width: w, height: h, fill: ink.wood, class: 'wood', stroke: ink.text, 'stroke-width': 0.35 }
  const turn = isUpright(w, h) ? { turn: -90 } : {}
  const words = pieceLines(piece, frame).map(({ text, size, bold, off }) =>
    textAt(isUpright(w, h) ? off : 0, isUpright(w, h) ? 0 : off, text, { size, anchor: 'middle', bold, ...turn })
  )
  const group = { transform: `translate(${middle.x.toFixed(2)} ${middle.y.toFixed(2)})` }
  return element('rect', shape) + element('g', group, words.join(''))
}

/** The words on a piece, for numbers to keep clear of. */
export function drawnWords(piece: LaidPiece, frame: SheetFrame): readonly Drawn[] {
  const { w, h, middle } = placeOf(piece, frame)
  return pieceLines(piece, frame).map(({ text, size, off }) => {
    const [half, centre] = [textWidth(text, size) / 2, off - 0.35 * size]
    return isUpright(w, h)
      ? drawnBlock({ x: middle.x + centre, y: middle.y }, size, 2 * half)
      : drawnBlock({ x: middle.x, y: middle.y + centre }, 2 * half, size)
  })
}
