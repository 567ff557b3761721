/** A chart of curves over frequency: logarithmic axis, labelled limits, curves told apart by colour and dash. */
import { line } from 'd3-shape'
import { told } from '../../domain/say.ts'
import { axesOf, gridOf, type LineChart, plot, type Scales, type Series, scalesOf, size } from './chart-frame.ts'
import { significant } from './number-text.ts'
import { ink, strokes } from './paper.ts'
import { element, svgDocument, textAt, textWidth } from './svg.ts'

function curvesOf({ id, frequencyHz, series }: LineChart, { x, y }: Scales): string {
  const paths = series.map(({ values }, index) => {
    const stroke = strokes[index % strokes.length] ?? strokes[0]
    const points = frequencyHz.map((hz, place): [number, number] => [x(hz), y(values[place] ?? Number.NaN)])
    const path = line<[number, number]>()
      .defined(([, height]) => Number.isFinite(height))
      .x(point => Math.round(point[0] * 100) / 100)
      .y(point => Math.round(Math.max(-5000, Math.min(5000, point[1])) * 100) / 100)
    return element('path', {
      d: path(points) ?? undefined,
      fill: 'none',
      stroke: stroke.colour,
      class: `curve-${index + 1}`,
      'stroke-width': 2.2,
      'stroke-dasharray': stroke.dash,
      'stroke-linejoin': 'round'
    })
  })
  const clip = element(
    'clipPath',
    { id: `${id}-clip` },
    element('rect', { x: plot.left, y: plot.top, width: plot.right - plot.left, height: plot.bottom - plot.top })
  )
  return element('defs', {}, clip) + element('g', { 'clip-path': `url(#${id}-clip)` }, ...paths)
}

function legendOf(series: readonly Series[]): string {
  let x = plot.left
  return series
    .map(({ label }, index) => {
      const stroke = strokes[index % strokes.length] ?? strokes[0]
      const sample = element('line', {
        x1: x,
        x2: x + 30,
        y1: 52,
        y2: 52,
        stroke: stroke.colour,
        class: `curve-${index + 1}`,
        'stroke-width': 2.2,
        'stroke-dasharray': stroke.dash
      })
      const text = textAt(x + 37, 56, label, { size: 12.5 })
      x += 37 + textWidth(label, 12.5) + 20
      return sample + text
    })
    .join('')
}

/** Where a limit's label stands clear of every curve: the first free of six places, else the first. */
function labelPlace(chart: LineChart, { x, y }: Scales, at: number, label: string) {
  const width = textWidth(label, 12)
  const middle = (plot.left + plot.right) / 2
  const places = [-6, 15].flatMap(dy =>
    [plot.right - 14 - width, plot.left + 6, middle - width / 2].map(left => ({ left, base: y(at) + dy }))
  )
  const inside = places.filter(({ base }) => base - 12 > plot.top && base + 3 < plot.bottom)
  const free = inside.find(({ left, base }) =>
    chart.frequencyHz.every((hz, index) => {
      if (x(hz) < left - 4 || x(hz) > left + width + 4) return true
      return chart.series.every(({ values }) => {
        const height = y(values[index] ?? Number.NaN)
        return !(height > base - 15 && height < base + 6)
      })
    })
  )
  return free ?? inside[0] ?? { left: plot.left + 6, base: y(at) - 6 }
}

function limitsOf(chart: LineChart, scales: Scales): string {
  const { limits = [], yRange } = chart
  return limits
    .filter(({ at }) => at >= yRange[0] && at <= yRange[1])
    .map(({ at, label }) => {
      const { left, base } = labelPlace(chart, scales, at, label)
      const y = scales.y(at)
      return (
        element('line', {
          x1: plot.left,
          x2: plot.right,
          y1: y,
          y2: y,
          stroke: ink.limit,
          class: 'limit',
          'stroke-width': 1.4,
          'stroke-dasharray': '12 4'
        }) + textAt(left, base, label, { size: 12, colour: ink.limit, className: 'limit-text' })
      )
    })
    .join('')
}

/** Labels stand above the frame: the leftmost to the left of its line, the others to the right. */
function marksOf({ marks = [] }: LineChart, { x, fromHz, toHz }: Scales): string {
  const shown = marks.filter(({ at }) => at >= fromHz && at <= toHz).sort((a, b) => a.at - b.at)
  return shown
    .map(({ at, label }, index) => {
      const room = x(at) - plot.left > textWidth(label, 11.5)
      const left = shown.length > 1 && index === 0 && room
      return (
        element('line', {
          x1: x(at),
          x2: x(at),
          y1: plot.top - 12,
          y2: plot.bottom,
          stroke: ink.quiet,
          class: 'mark',
          'stroke-dasharray': '1 3',
          'stroke-width': 1.3
        }) +
        textAt(x(at) + (left ? -5 : 5), plot.top - 6, label, {
          size: 11.5,
          anchor: left ? 'end' : 'start',
          colour: ink.quiet,
          className: 'quiet'
        })
      )
    })
    .join('')
}

/** The chart in words, for who cannot see it. */
export function chartDescription({ frequencyHz, series, yUnit, limits = [], language }: LineChart): string {
  const three = (value: number) => significant(value, 3, { language })
  const range = told(language, 'chart.range', {
    from: three(frequencyHz[0] ?? 0),
    to: three(frequencyHz.at(-1) ?? 0)
  })
  const curves = series.map(({ label, values }) => {
    const finite = values.flatMap((value, index) =>
      Number.isFinite(value) ? [{ value, hz: frequencyHz[index] ?? 0 }] : []
    )
    const [first] = finite
    if (first === undefined) return told(language, 'chart.no-values', { label })
    const high = finite.reduce((best, next) => (next.value > best.value ? next : best), first)
    const low = finite.reduce((best, next) => (next.value < best.value ? next : best), first)
    return told(language, 'chart.extremes', {
      label,
      unit: yUnit,
      high: three(high.value),
      highAt: three(high.hz),
      low: three(low.value),
      lowAt: three(low.hz)
    })
  })
  return [range, ...curves, ...limits.map(({ label }) => told(language, 'chart.line', { label }))].join(' ')
}

export function lineChart(chart: LineChart): string {
  const scales = scalesOf(chart)
  return svgDocument(
    { id: chart.id, title: chart.title, description: chartDescription(chart) },
    size,
    textAt(plot.left, 30, chart.title, { size: 17, bold: true }),
    legendOf(chart.series),
    gridOf(scales),
    axesOf(chart, scales),
    marksOf(chart, scales),
    curvesOf(chart, scales),
    limitsOf(chart, scales)
  )
}
