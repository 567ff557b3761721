/** Parts of the wiring diagram: devices, runs, fuses, body points, drivers. */
import { ink } from '../draw/paper.ts'
import { element, textAt } from '../draw/svg.ts'

export type Points = readonly (readonly [number, number])[]

const wire = { plus: 2.6, minus: 2.6, thin: 1.4 } as const

export function device(
  x: number,
  y: number,
  width: number,
  height: number,
  title: string,
  lines: readonly string[]
): string {
  return (
    element('rect', {
      x,
      y,
      width,
      height,
      rx: 3,
      fill: ink.wood,
      class: 'wood',
      stroke: ink.text,
      'stroke-width': 1.4
    }) +
    textAt(x + width / 2, y + 20, title, { size: 13, anchor: 'middle', bold: true }) +
    lines
      .map((text, index) =>
        textAt(x + width / 2, y + 37 + index * 14, fitted(text, width), { size: 10.5, anchor: 'middle' })
      )
      .join('')
  )
}

export const fitted = (text: string, width: number) => {
  const most = Math.floor(width / 6.1)
  return [...text].length <= most ? text : `${[...text].slice(0, most - 1).join('')}…`
}

/** Three bars that shorten: joined to the body of the car. */
export function bodyPoint(x: number, y: number): string {
  const bars = [12, 8, 4].map((half, index) =>
    element('line', {
      x1: x - half,
      x2: x + half,
      y1: y + index * 5,
      y2: y + index * 5,
      stroke: ink.text,
      class: 'ink-line',
      'stroke-width': 2
    })
  )
  return bars.join('')
}

/** Plus lines run whole, minus lines dashed, so that they differ without colour. */
export function run(points: Points, kind: 'plus' | 'minus' | 'thin'): string {
  const look = {
    plus: { stroke: ink.limit, class: 'limit' },
    minus: { stroke: ink.text, class: 'ink-line', 'stroke-dasharray': '9 4' },
    thin: { stroke: ink.quiet, class: 'thin' }
  }[kind]
  return element('polyline', {
    points: points.map(([x, y]) => `${x},${y}`).join(' '),
    fill: 'none',
    'stroke-width': wire[kind],
    ...look
  })
}

export const note = (
  x: number,
  y: number,
  text: string,
  { anchor = 'middle', width = 330 }: { readonly anchor?: 'start' | 'middle' | 'end'; readonly width?: number } = {}
) => textAt(x, y, fitted(text, width), { size: 11, anchor })

export const sign = (x: number, y: number, text: string, size: number) => textAt(x, y, text, { size, bold: true })

/** What must not be overlooked. */
export const alarm = (x: number, y: number, text: string, anchor: 'start' | 'middle' = 'middle') =>
  textAt(x, y, text, { size: 11.5, anchor, colour: ink.limit, className: 'limit-text', bold: true })

/** A fuse-link on a line at this height, 44 wide. */
export const fuseLink = (x: number, y: number): string =>
  element('rect', {
    x,
    y: y - 9,
    width: 44,
    height: 18,
    fill: ink.paper,
    class: 'paper-shape',
    stroke: ink.limit,
    'stroke-width': 1.6
  }) + element('line', { x1: x + 4, x2: x + 40, y1: y, y2: y, stroke: ink.limit, class: 'limit', 'stroke-width': 1.4 })

function driver(x: number, y: number, number: number): string {
  return (
    element('circle', {
      cx: x,
      cy: y,
      r: 25,
      fill: ink.paper,
      class: 'paper-shape',
      stroke: ink.text,
      'stroke-width': 1.4
    }) +
    element('circle', {
      cx: x,
      cy: y,
      r: 9,
      fill: ink.wood,
      class: 'wood',
      stroke: ink.text,
      'stroke-width': 1
    }) +
    textAt(x, y + 40, `driver ${number}`, { size: 10, anchor: 'middle', colour: ink.quiet, className: 'quiet' })
  )
}

/** The box and its drivers, at most four of them drawn. */
export function driversInBox(x: number, top: number, count: number): string {
  const shown = Math.min(count, 4)
  const figures = Array.from({ length: shown }, (_, index) => driver(x + 66, top + 36 + index * 76, index + 1))
  return [
    element('rect', {
      x,
      y: top,
      width: 100,
      height: shown * 76 + 6,
      rx: 3,
      fill: 'none',
      stroke: ink.quiet,
      class: 'thin',
      'stroke-dasharray': '4 3'
    }),
    textAt(x + 50, top - 8, 'box', { size: 11, anchor: 'middle', colour: ink.quiet, className: 'quiet' }),
    ...figures,
    count > shown
      ? textAt(x + 66, top + 36 + shown * 76, `and ${count - shown} more`, { size: 10.5, anchor: 'middle' })
      : ''
  ].join('')
}
