/** Parts of the wiring picture: devices, lines, fuses, numbers, ground points, drivers. It runs down a column as wide as a phone. */
import { ink } from '../draw/paper.ts'
import { element, textAt, textWidth } from '../draw/svg.ts'
import type { WiringLine, WiringTap } from './system-wiring-record.ts'

export const WIDTH = 340
/** Where the lines run down: common plus of a block, plus, minus, turn-on and signal. */
export const LINE_X = { common: 12, plus: 46, minus: 82, turnOn: 306, signal: 322 } as const
const TEXT = 12
/** From one line of text to the next. */
export const LEADING = 15
/** Beside the lines, behind the number. */
export const LABEL_X = 122

const look = {
  plus: { stroke: ink.limit, class: 'limit', 'stroke-width': 2.6 },
  minus: { stroke: ink.text, class: 'ink-line', 'stroke-width': 2.6, 'stroke-dasharray': '9 4' },
  thin: { stroke: ink.quiet, class: 'thin', 'stroke-width': 1.4 }
} as const

/** Plus lines run whole, minus lines dashed, so that they differ without colour. */
export const wireLine = (points: readonly (readonly [number, number])[], kind: keyof typeof look): string =>
  element('polyline', { points: points.map(([x, y]) => `${x},${y}`).join(' '), fill: 'none', ...look[kind] })

export const down = (x: number, from: number, to: number, kind: keyof typeof look): string =>
  wireLine(
    [
      [x, from],
      [x, to]
    ],
    kind
  )

/** A space that no unit follows: a figure and its unit stay together. */
const GAPS = / (?!(?:m|mm|mm²|ft|in|A|V|Ω|AWG)(?![\p{L}\d]))/u

/** Breaks a text at spaces to lines that fit beside the picture. */
export function broken(text: string, width: number, size: number = TEXT): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(GAPS)) {
    const last = lines.at(-1)
    if (last === undefined || textWidth(`${last} ${word}`, size) > width) lines.push(word)
    else lines[lines.length - 1] = `${last} ${word}`
  }
  return lines
}

export const deviceHeight = (lines: readonly string[]): number => 30 + lines.length * LEADING

/** A device with its name and what is said of it, its lines in the middle. */
export function device(x: number, y: number, width: number, title: string, lines: readonly string[]): string {
  const middle = x + width / 2
  return [
    element('rect', {
      x,
      y,
      width,
      height: deviceHeight(lines),
      rx: 2,
      fill: ink.wood,
      class: 'wood device',
      stroke: ink.text,
      'stroke-width': 1.4
    }),
    textAt(middle, y + 19, title, { size: 13, anchor: 'middle', bold: true }),
    ...lines.map((text, index) => textAt(middle, y + 36 + index * LEADING, text, { size: TEXT, anchor: 'middle' }))
  ].join('')
}

/** A fuse-link on a line that runs down: 16 wide, 34 high. */
export const FUSE_HEIGHT = 34
export const fuseLink = (x: number, y: number): string =>
  element('rect', {
    x: x - 8,
    y,
    width: 16,
    height: FUSE_HEIGHT,
    fill: ink.paper,
    class: 'paper-shape fuse',
    stroke: ink.limit,
    'stroke-width': 1.6
  }) + element('line', { x1: x, x2: x, y1: y + 4, y2: y + 30, stroke: ink.limit, class: 'limit', 'stroke-width': 1.4 })

/** Three bars that shorten upwards: joined to the body of the car. */
export const bodyPoint = (x: number, y: number, upwards: boolean): string =>
  [11, 7, 3]
    .map((half, index) => {
      const at = y + index * (upwards ? -4 : 4)
      return element('line', {
        x1: x - half,
        x2: x + half,
        y1: at,
        y2: at,
        stroke: ink.text,
        class: 'ink-line',
        'stroke-width': 2
      })
    })
    .join('')

/** Where returns by cable come together. */
export const meetingPoint = (x: number, y: number): string =>
  element('circle', { cx: x, cy: y, r: 4, fill: ink.text, class: 'ink-fill' })

/** The number of a conductor, as in the table. */
export const disc = (x: number, y: number, { number }: WiringLine): string =>
  number === undefined
    ? ''
    : element('circle', { cx: x, cy: y, r: 8.5, fill: ink.cut, class: 'bubble' }) +
      textAt(x, y + 4, String(number), {
        size: 11,
        anchor: 'middle',
        colour: ink.paper,
        className: 'bubble-text',
        bold: true
      })

export const words = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): string =>
  textAt(x, y, text, { size: TEXT, anchor })

/** A thin wire across into a device, over a small fuse: its rating above it, size and length below, all right of `x`. */
export function thinFeed(
  [from, to]: readonly [number, number],
  y: number,
  x: number,
  { fuse, line }: WiringTap
): string {
  const left = x + 30
  const link = element('rect', {
    x: left,
    y: y - 5,
    width: 26,
    height: 10,
    fill: ink.paper,
    class: 'paper-shape fuse',
    stroke: ink.limit,
    'stroke-width': 1.4
  })
  const across = wireLine(
    [
      [from, y],
      [to, y]
    ],
    'thin'
  )
  const lines = broken(line.text, Math.max(from, to) - x - 6)
  const texts = lines.map((text, index) => words(x, y + 22 + index * LEADING, text)).join('')
  return across + link + disc(x + 12, y, line) + words(left + 2, y - 9, fuse) + texts
}

/** What must not be overlooked. */
export const alarm = (x: number, y: number, text: string): string =>
  textAt(x, y, text, { size: TEXT, colour: ink.limit, className: 'limit-text', bold: true })

export const quietWords = (x: number, y: number, text: string): string =>
  textAt(x, y, text, { size: TEXT, colour: ink.quiet, className: 'quiet' })

/** The drivers in their box, at most four of them drawn. */
export function driverRow(y: number, count: number): string {
  const shown = Math.min(count, 4)
  const middle = (index: number) => WIDTH / 2 + (index - (shown - 1) / 2) * 62
  const circle = (cx: number, r: number, fill: string, className: string) =>
    element('circle', { cx, cy: y + 26, r, fill, class: className, stroke: ink.text, 'stroke-width': 1.2 })
  const drawn = Array.from(
    { length: shown },
    (_, index) =>
      circle(middle(index), 24, ink.paper, 'paper-shape driver-ring') + circle(middle(index), 9, ink.wood, 'wood')
  )
  const more = count > shown ? words(WIDTH - 14, y + 30, `+ ${count - shown}`, 'end') : ''
  return drawn.join('') + more
}
