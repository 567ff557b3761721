/** Parts of the wiring diagram: devices, runs, fuse, body points, drivers. */
import { ink } from './paper.ts'
import { element, textAt } from './svg.ts'
import type { SystemWiring } from './system-wiring.ts'

export const size = { width: 760, height: 400 }
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
function bodyPoint(x: number, y: number): string {
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

export function returnPath({ negative, returnBy }: SystemWiring): string {
  if (returnBy === 'cable')
    return (
      run(
        [
          [130, 176],
          [400, 176]
        ],
        'minus'
      ) + note(265, 194, negative)
    )
  return [
    run(
      [
        [130, 176],
        [168, 176],
        [168, 206]
      ],
      'minus'
    ),
    bodyPoint(168, 206),
    run(
      [
        [400, 176],
        [330, 176],
        [330, 206]
      ],
      'minus'
    ),
    bodyPoint(330, 206),
    note(250, 236, negative),
    note(250, 251, 'each to its own bolt on bare metal')
  ].join('')
}

/** Plus lines run whole, minus lines dashed, so that they differ without colour. */
export function run(points: readonly (readonly [number, number])[], kind: 'plus' | 'minus' | 'thin'): string {
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

export const note = (x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end' = 'middle') =>
  textAt(x, y, fitted(text, 330), { size: 11, anchor })

export function driverFigures(count: number): string {
  const shown = Math.min(count, 4)
  return (
    Array.from({ length: shown }, (_, index) => {
      const y = 92 + index * 76
      return (
        element('circle', {
          cx: 706,
          cy: y,
          r: 25,
          fill: ink.paper,
          class: 'paper-shape',
          stroke: ink.text,
          'stroke-width': 1.4
        }) +
        element('circle', {
          cx: 706,
          cy: y,
          r: 9,
          fill: ink.wood,
          class: 'wood',
          stroke: ink.text,
          'stroke-width': 1
        }) +
        textAt(706, y + 40, `driver ${index + 1}`, {
          size: 10,
          anchor: 'middle',
          colour: ink.quiet,
          className: 'quiet'
        })
      )
    }).join('') +
    (count > shown ? textAt(706, 92 + shown * 76, `and ${count - shown} more`, { size: 10.5, anchor: 'middle' }) : '')
  )
}

export function fuseFigure({ fuse, fusePlace }: SystemWiring): string {
  if (fuse === undefined)
    return textAt(250, 92, 'no fuse rated: do not connect', {
      size: 12,
      anchor: 'middle',
      colour: ink.limit,
      className: 'limit-text',
      bold: true
    })
  return (
    element('rect', {
      x: 196,
      y: 102,
      width: 44,
      height: 18,
      fill: ink.paper,
      class: 'paper-shape',
      stroke: ink.limit,
      'stroke-width': 1.6
    }) +
    element('line', { x1: 200, x2: 236, y1: 111, y2: 111, stroke: ink.limit, class: 'limit', 'stroke-width': 1.4 }) +
    textAt(268, 95, fitted(fuse, 220), { size: 11, anchor: 'middle', bold: true }) +
    (fusePlace === undefined
      ? ''
      : textAt(268, 80, fitted(fusePlace, 230), {
          size: 10.5,
          anchor: 'middle',
          colour: ink.quiet,
          className: 'quiet'
        }))
  )
}
