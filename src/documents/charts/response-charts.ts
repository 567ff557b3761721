/** The charts of one enclosure, from its curves. */
import type { LineChart, Series } from '../draw/chart-frame.ts'
import { lineChart } from '../draw/line-chart.ts'
import { figure } from '../draw/number-text.ts'

/** The curves a chart is drawn from; the response of an enclosure carries them. SI, peak where the network says peak. */
export interface ChartCurves {
  readonly frequencyHz: readonly number[]
  readonly levelDb: readonly number[]
  readonly impedanceOhm: readonly number[]
  readonly coneExcursionM: readonly number[]
  readonly groupDelayS: readonly number[]
  readonly rearPortAirSpeedMPerS?: readonly number[]
  readonly frontPortAirSpeedMPerS?: readonly number[]
  readonly passiveRadiatorExcursionM?: readonly number[]
  /** The largest sine that keeps to every limit. */
  readonly maximumLevelDb?: readonly number[]
}

/** What the curves are judged by; each that is known is drawn. */
export interface ChartLimits {
  readonly xmaxM?: number
  readonly airSpeedMPerS?: number
  readonly minimumOhm?: number
  readonly tuningHz?: number
  readonly f3Hz?: number
  /** A second level curve, such as the level at the seat. */
  readonly cabinLevelDb?: readonly number[]
}

interface NamedChart {
  readonly name: string
  readonly svg: string
}

const largest = (values: readonly number[]) =>
  values.reduce((most, value) => (Number.isFinite(value) ? Math.max(most, value) : most), 0)

/** A round number a little above the value. */
export function roundUp(value: number): number {
  if (!(value > 0)) return 1
  const step = 10 ** Math.floor(Math.log10(value))
  const found = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find(factor => factor * step >= value)
  return (found ?? 10) * step
}

function levelRange(curves: readonly (readonly number[])[]): readonly [number, number] {
  const top = Math.ceil((largest(curves.flat()) + 2) / 5) * 5
  return [top - 45, top]
}

/** From zero to above the curve, but never so far that a limit is lost at the bottom. */
function rangeWithLimit(curves: readonly (readonly number[])[], limit: number | undefined): readonly [number, number] {
  const top = largest(curves.flat()) * 1.05
  return [0, roundUp(limit === undefined ? top : Math.min(Math.max(top, limit * 1.25), limit * 2.5))]
}

function marksOf({ tuningHz, f3Hz }: ChartLimits) {
  return [
    ...(f3Hz === undefined ? [] : [{ at: f3Hz, label: `f3 ${figure(f3Hz, 1)} Hz` }]),
    ...(tuningHz === undefined ? [] : [{ at: tuningHz, label: `tuning ${figure(tuningHz, 1)} Hz` }])
  ]
}

function excursionChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const mm = (values: readonly number[]) => values.map(value => value * 1000)
  const series: Series[] = [{ label: 'cone, peak', values: mm(curves.coneExcursionM) }]
  const radiator = curves.passiveRadiatorExcursionM
  if (radiator !== undefined) series.push({ label: 'passive radiator, peak', values: mm(radiator) })
  const xmaxMm = limits.xmaxM === undefined ? undefined : limits.xmaxM * 1000
  return {
    id: `${prefix}-excursion`,
    title: 'Excursion, one way',
    frequencyHz: curves.frequencyHz,
    series,
    yLabel: 'Excursion',
    yUnit: 'mm',
    yRange: rangeWithLimit(
      series.map(({ values }) => values),
      xmaxMm
    ),
    limits: xmaxMm === undefined ? [] : [{ at: xmaxMm, label: `Xmax ${figure(xmaxMm, 1)} mm` }],
    marks: marksOf(limits)
  }
}

function airSpeedChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart | undefined {
  const { rearPortAirSpeedMPerS: rear, frontPortAirSpeedMPerS: front } = curves
  const series = [
    ...(rear === undefined ? [] : [{ label: front === undefined ? 'port, peak' : 'rear port, peak', values: rear }]),
    ...(front === undefined ? [] : [{ label: rear === undefined ? 'port, peak' : 'front port, peak', values: front }])
  ]
  if (series.length === 0) return undefined
  const limit = limits.airSpeedMPerS
  return {
    id: `${prefix}-air-speed`,
    title: 'Air speed in the port',
    frequencyHz: curves.frequencyHz,
    series,
    yLabel: 'Air speed',
    yUnit: 'm/s',
    yRange: rangeWithLimit(
      series.map(({ values }) => values),
      limit
    ),
    limits: limit === undefined ? [] : [{ at: limit, label: `limit ${figure(limit, 1)} m/s` }],
    marks: marksOf(limits)
  }
}

function levelChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const { frequencyHz, levelDb, maximumLevelDb: most } = curves
  const cabin = limits.cabinLevelDb
  const series: Series[] = [
    { label: 'half space, 1 m', values: levelDb },
    ...(cabin === undefined ? [] : [{ label: 'at the seat', values: cabin }]),
    ...(most === undefined ? [] : [{ label: 'most within every limit, 1 m', values: most }])
  ]
  return {
    id: `${prefix}-level`,
    title: 'Sound pressure level',
    frequencyHz,
    series,
    yLabel: 'Level',
    yUnit: 'dB',
    yRange: levelRange(series.map(({ values }) => values)),
    marks: marksOf(limits)
  }
}

function impedanceChart({ frequencyHz, impedanceOhm }: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const minimum = limits.minimumOhm
  return {
    id: `${prefix}-impedance`,
    title: 'Impedance at the terminals',
    frequencyHz,
    series: [{ label: 'modulus', values: impedanceOhm }],
    yLabel: 'Impedance',
    yUnit: 'Ω',
    yRange: [0, roundUp(largest(impedanceOhm) * 1.05)],
    limits: minimum === undefined ? [] : [{ at: minimum, label: `amplifier minimum ${figure(minimum, 2)} Ω` }],
    marks: marksOf(limits)
  }
}

function groupDelayChart({ frequencyHz, groupDelayS }: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const delayMs = groupDelayS.map(value => value * 1000)
  const lowest = Math.min(...delayMs.filter(Number.isFinite), 0)
  return {
    id: `${prefix}-group-delay`,
    title: 'Group delay',
    frequencyHz,
    series: [{ label: 'acoustic', values: delayMs }],
    yLabel: 'Delay',
    yUnit: 'ms',
    yRange: [Math.min(0, Math.floor(lowest)), roundUp(largest(delayMs) * 1.05)],
    marks: marksOf(limits)
  }
}

/** @param prefix  keeps ids apart when several designs share a page */
export function responseCharts(curves: ChartCurves, limits: ChartLimits = {}, prefix = 'chart'): readonly NamedChart[] {
  const charts = {
    level: levelChart(curves, limits, prefix),
    excursion: excursionChart(curves, limits, prefix),
    'air-speed': airSpeedChart(curves, limits, prefix),
    impedance: impedanceChart(curves, limits, prefix),
    'group-delay': groupDelayChart(curves, limits, prefix)
  }
  return Object.entries(charts).flatMap(([name, chart]) =>
    chart === undefined ? [] : [{ name, svg: lineChart(chart) }]
  )
}
