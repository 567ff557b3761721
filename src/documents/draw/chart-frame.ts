/** Scales, grid, axes and their labels of a chart over frequency. */
import { scaleLinear, scaleLog } from 'd3-scale'
import { type Language, told } from '../../domain/say.ts'
import { figure } from './number-text.ts'
import { ink } from './paper.ts'
import { element, textAt, textWidth } from './svg.ts'

export interface Series {
  readonly label: string
  readonly values: readonly number[]
}

interface ChartMark {
  readonly at: number
  readonly label: string
}

export interface LineChart {
  readonly language: Language
  readonly id: string
  readonly title: string
  readonly frequencyHz: readonly number[]
  readonly series: readonly Series[]
  readonly yLabel: string
  readonly yUnit: string
  readonly yRange: readonly [number, number]
  /** Horizontal limits. */
  readonly limits?: readonly ChartMark[]
  /** Frequencies worth a vertical line. */
  readonly marks?: readonly ChartMark[]
}

export const size = { width: 760, height: 430 }
export const plot = { left: 66, right: 736, top: 84, bottom: 372 }

const labelledHz = [5, 10, 20, 30, 40, 50, 70, 100, 150, 200, 300, 500, 700, 1000, 2000, 5000]
const everyHz = [1, 10, 100, 1000].flatMap(decade => [1, 2, 3, 4, 5, 6, 7, 8, 9].map(step => step * decade))

export interface Scales {
  readonly x: (hz: number) => number
  readonly y: (value: number) => number
  readonly yTicks: readonly number[]
  readonly fromHz: number
  readonly toHz: number
}

export function scalesOf({ frequencyHz, yRange }: LineChart): Scales {
  const fromHz = frequencyHz[0] ?? 10
  const toHz = Math.max(frequencyHz.at(-1) ?? 200, fromHz * 1.01)
  const x = scaleLog().domain([fromHz, toHz]).range([plot.left, plot.right])
  const y = scaleLinear()
    .domain([...yRange])
    .range([plot.bottom, plot.top])
  return { x, y, yTicks: y.ticks(6), fromHz, toHz }
}

export function gridOf({ x, y, yTicks, fromHz, toHz }: Scales): string {
  const vertical = everyHz
    .filter(hz => hz >= fromHz && hz <= toHz)
    .map(hz =>
      element('line', {
        x1: x(hz),
        x2: x(hz),
        y1: plot.top,
        y2: plot.bottom,
        stroke: ink.grid,
        class: 'grid',
        'stroke-width': labelledHz.includes(hz) ? 1 : 0.5
      })
    )
  const horizontal = yTicks.map(tick =>
    element('line', { x1: plot.left, x2: plot.right, y1: y(tick), y2: y(tick), stroke: ink.grid, class: 'grid' })
  )
  const frame = element('rect', {
    x: plot.left,
    y: plot.top,
    width: plot.right - plot.left,
    height: plot.bottom - plot.top,
    fill: 'none',
    stroke: ink.quiet,
    class: 'frame'
  })
  return [...vertical, ...horizontal, frame].join('')
}

/** Labels that would touch the one before are left out. */
function frequencyLabels({ x, fromHz, toHz }: Scales): string {
  let free = Number.NEGATIVE_INFINITY
  return labelledHz
    .filter(hz => hz >= fromHz && hz <= toHz)
    .flatMap(hz => {
      const text = hz >= 1000 ? `${hz / 1000}k` : String(hz)
      const half = textWidth(text, 12) / 2
      if (x(hz) - half < free) return []
      free = x(hz) + half + 4
      return [
        textAt(x(hz), plot.bottom + 18, text, { size: 12, anchor: 'middle', colour: ink.quiet, className: 'quiet' })
      ]
    })
    .join('')
}

export function axesOf(chart: LineChart, scales: Scales): string {
  const { y, yTicks } = scales
  const labels = yTicks.map(tick =>
    textAt(plot.left - 8, y(tick) + 4, figure(tick, 3, chart), {
      size: 12,
      anchor: 'end',
      colour: ink.quiet,
      className: 'quiet'
    })
  )
  const middle = (plot.top + plot.bottom) / 2
  return [
    ...labels,
    frequencyLabels(scales),
    textAt((plot.left + plot.right) / 2, plot.bottom + 40, told(chart.language, 'chart.frequency'), {
      size: 13,
      anchor: 'middle'
    }),
    textAt(20, middle, `${chart.yLabel} [${chart.yUnit}]`, { size: 13, anchor: 'middle', turn: -90 })
  ].join('')
}
