/** Dimension lines of our own make: thin, ended by short slanted strokes, the figure above the line. Millimetres of paper. */
import { dimension, type Reader } from '../draw/number-text.ts'
import { ink } from '../draw/paper.ts'
import { element, textAt, textWidth } from '../draw/svg.ts'

export const line = { thick: 0.5, thin: 0.18, text: 2.6, small: 2.2 } as const

export interface PanelFrame {
  /** Paper millimetres a metre of panel. */
  readonly perM: number
  /** Of the lower left corner of the blank. */
  readonly x: number
  readonly y: number
  readonly paper: Reader
}

export interface PanelExtent {
  readonly uM: number
  readonly vM: number
}

export const toX = (uM: number, { x, perM }: PanelFrame): number => x + uM * perM
export const toY = (vM: number, { y, perM }: PanelFrame): number => y - vM * perM

export function stroke(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  width: number,
  colour: string,
  className: string,
  dash?: string
): string {
  return element('line', {
    x1,
    y1,
    x2,
    y2,
    stroke: colour,
    class: className,
    'stroke-width': width,
    'stroke-dasharray': dash
  })
}

const thin = (x1: number, y1: number, x2: number, y2: number) => stroke(x1, y1, x2, y2, line.thin, ink.quiet, 'thin')

/** A short slanted stroke where a dimension line ends. */
const tick = (x: number, y: number) => stroke(x - 0.9, y + 0.9, x + 0.9, y - 0.9, 0.35, ink.text, 'ink-line')

/** A dimension between two places at one height; `out` is where its line lies. */
export function alongU(fromM: number, toM: number, out: number, frame: PanelFrame, from: number): string {
  const [a, b] = [toX(fromM, frame), toX(toM, frame)]
  const text = dimension(Math.abs(toM - fromM), frame.paper)
  const side = out > from ? 1 : -1
  const fits = textWidth(text, line.text) < b - a - 2
  return [
    thin(a, from + side, a, out + side),
    thin(b, from + side, b, out + side),
    thin(a, out, b, out),
    tick(a, out),
    tick(b, out),
    textAt(fits ? (a + b) / 2 : b + 2, out - 0.9, text, { size: line.text, anchor: fits ? 'middle' : 'start' })
  ].join('')
}

export function alongV(fromM: number, toM: number, out: number, frame: PanelFrame, from: number): string {
  const [a, b] = [toY(fromM, frame), toY(toM, frame)]
  const text = dimension(Math.abs(toM - fromM), frame.paper)
  const side = out > from ? 1 : -1
  const fits = textWidth(text, line.text) < a - b - 2
  const middle = fits ? (a + b) / 2 : b - 2 - textWidth(text, line.text) / 2
  return [
    thin(from + side, a, out + side, a),
    thin(from + side, b, out + side, b),
    thin(out, a, out, b),
    tick(out, a),
    tick(out, b),
    textAt(out - 0.9, middle, text, { size: line.text, anchor: 'middle', turn: -90 })
  ].join('')
}
