/** The charts of one enclosure, from its curves. */

import { type Language, told } from '../../domain/say.ts'
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
  readonly language: Language
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
  readonly title: string
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

function marksOf({ tuningHz, f3Hz, language }: ChartLimits) {
  const one = (value: number) => figure(value, 1, { language })
  const tuning = (at: number) => ({ at, label: told(language, 'chart.tuning', { frequency: one(at) }) })
  return [
    ...(f3Hz === undefined ? [] : [{ at: f3Hz, label: `f3 ${one(f3Hz)} Hz` }]),
    ...(tuningHz === undefined ? [] : [tuning(tuningHz)])
  ]
}

function excursionChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const { language } = limits
  const mm = (values: readonly number[]) => values.map(value => value * 1000)
  const series: Series[] = [{ label: told(language, 'chart.cone-peak'), values: mm(curves.coneExcursionM) }]
  const radiator = curves.passiveRadiatorExcursionM
  if (radiator !== undefined) series.push({ label: told(language, 'chart.radiator-peak'), values: mm(radiator) })
  const xmaxMm = limits.xmaxM === undefined ? undefined : limits.xmaxM * 1000
  return {
    id: `${prefix}-excursion`,
    language,
    title: told(language, 'chart.excursion'),
    frequencyHz: curves.frequencyHz,
    series,
    yLabel: told(language, 'chart.excursion-axis'),
    yUnit: 'mm',
    yRange: rangeWithLimit(
      series.map(({ values }) => values),
      xmaxMm
    ),
    limits: xmaxMm === undefined ? [] : [{ at: xmaxMm, label: `Xmax ${figure(xmaxMm, 1, limits)} mm` }],
    marks: marksOf(limits)
  }
}

function airSpeedChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart | undefined {
  const { rearPortAirSpeedMPerS: rear, frontPortAirSpeedMPerS: front } = curves
  const { language } = limits
  const only = told(language, 'chart.port-peak')
  const [atRear, atFront] = [told(language, 'chart.rear-port-peak'), told(language, 'chart.front-port-peak')]
  const series = [
    ...(rear === undefined ? [] : [{ label: front === undefined ? only : atRear, values: rear }]),
    ...(front === undefined ? [] : [{ label: rear === undefined ? only : atFront, values: front }])
  ]
  if (series.length === 0) return undefined
  const limit = limits.airSpeedMPerS
  return {
    id: `${prefix}-air-speed`,
    language,
    title: told(language, 'chart.air-speed'),
    frequencyHz: curves.frequencyHz,
    series,
    yLabel: told(language, 'chart.air-speed-axis'),
    yUnit: 'm/s',
    yRange: rangeWithLimit(
      series.map(({ values }) => values),
      limit
    ),
    limits:
      limit === undefined
        ? []
        : [{ at: limit, label: told(language, 'chart.limit', { value: figure(limit, 1, limits) }) }],
    marks: marksOf(limits)
  }
}

function levelChart(curves: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const { frequencyHz, levelDb, maximumLevelDb: most } = curves
  const { cabinLevelDb: cabin, language } = limits
  const series: Series[] = [
    { label: told(language, 'chart.half-space'), values: levelDb },
    ...(cabin === undefined ? [] : [{ label: told(language, 'chart.at-seat'), values: cabin }]),
    ...(most === undefined ? [] : [{ label: told(language, 'chart.most'), values: most }])
  ]
  return {
    id: `${prefix}-level`,
    language,
    title: told(language, 'chart.level'),
    frequencyHz,
    series,
    yLabel: told(language, 'chart.level-axis'),
    yUnit: 'dB',
    yRange: levelRange(series.map(({ values }) => values)),
    marks: marksOf(limits)
  }
}

function impedanceChart({ frequencyHz, impedanceOhm }: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const { minimumOhm: minimum, language } = limits
  return {
    id: `${prefix}-impedance`,
    language,
    title: told(language, 'chart.impedance'),
    frequencyHz,
    series: [{ label: told(language, 'chart.modulus'), values: impedanceOhm }],
    yLabel: told(language, 'chart.impedance-axis'),
    yUnit: 'Ω',
    yRange: [0, roundUp(largest(impedanceOhm) * 1.05)],
    limits:
      minimum === undefined
        ? []
        : [{ at: minimum, label: told(language, 'chart.minimum', { load: figure(minimum, 2, limits) }) }],
    marks: marksOf(limits)
  }
}

function groupDelayChart({ frequencyHz, groupDelayS }: ChartCurves, limits: ChartLimits, prefix: string): LineChart {
  const { language } = limits
  const delayMs = groupDelayS.map(value => value * 1000)
  const lowest = Math.min(...delayMs.filter(Number.isFinite), 0)
  return {
    id: `${prefix}-group-delay`,
    language,
    title: told(language, 'chart.group-delay'),
    frequencyHz,
    series: [{ label: told(language, 'chart.acoustic'), values: delayMs }],
    yLabel: told(language, 'chart.delay-axis'),
    yUnit: 'ms',
    yRange: [Math.min(0, Math.floor(lowest)), roundUp(largest(delayMs) * 1.05)],
    marks: marksOf(limits)
  }
}

/** @param prefix  keeps ids apart when several designs share a page */
export function responseCharts(curves: ChartCurves, limits: ChartLimits, prefix = 'chart'): readonly NamedChart[] {
  const charts = {
    level: levelChart(curves, limits, prefix),
    excursion: excursionChart(curves, limits, prefix),
    'air-speed': airSpeedChart(curves, limits, prefix),
    impedance: impedanceChart(curves, limits, prefix),
    'group-delay': groupDelayChart(curves, limits, prefix)
  }
  return Object.entries(charts).flatMap(([name, chart]) =>
    chart === undefined ? [] : [{ name, title: chart.title, svg: lineChart(chart) }]
  )
}
