/** Curves of several designs over each other: for a page of any width, and as one SVG. */
import type { ComparedCurves, Comparison } from '../../contract/enclosures/comparison.ts'
import { stackedCharts } from '../charts/chart-book.ts'
import type { FindingChart } from '../charts/finding-chart.ts'
import { roundUp } from '../charts/response-charts.ts'
import type { LineChart } from '../draw/chart-frame.ts'
import { lineChart } from '../draw/line-chart.ts'

interface Quantity {
  readonly id: string
  readonly title: string
  readonly unit: string
  readonly of: (curves: ComparedCurves) => readonly number[] | undefined
}

const quantities = ({ place }: Comparison): readonly Quantity[] => {
  const where = place === 'seat' ? 'at the seat' : 'at 1 m in half space'
  return [
    { id: 'level', title: `Level ${where}`, unit: 'dB', of: ({ levelDb }) => levelDb },
    { id: 'most', title: `Most within every limit ${where}`, unit: 'dB', of: ({ mostLevelDb }) => mostLevelDb },
    {
      id: 'travel',
      title: 'Travel of a cone, one way',
      unit: 'mm',
      of: ({ coneExcursionM }) => inThousandths(coneExcursionM)
    },
    { id: 'air', title: 'Air speed in the port', unit: 'm/s', of: ({ portAirSpeedMPerS }) => portAirSpeedMPerS },
    { id: 'delay', title: 'Group delay', unit: 'ms', of: ({ groupDelayS }) => inThousandths(groupDelayS) },
    { id: 'impedance', title: 'Impedance', unit: 'Ω', of: ({ impedanceOhm }) => impedanceOhm }
  ]
}

const inThousandths = (values: readonly number[]) => values.map(value => value * 1000)

interface Overlay extends Quantity {
  readonly series: readonly { readonly label: string; readonly values: readonly number[] }[]
  readonly range: readonly [number, number]
  readonly step: number
}

const TICKS = 5
const DB_SHOWN = 40

/** Decibels from a round figure down; everything else from zero up. */
function rangeOf(unit: string, values: readonly number[]): Pick<Overlay, 'range' | 'step'> {
  const most = values.filter(Number.isFinite).reduce((top, value) => Math.max(top, value), 0)
  if (unit === 'dB') {
    const top = Math.ceil((most + 2) / 10) * 10
    return { range: [top - DB_SHOWN, top], step: 10 }
  }
  const top = roundUp(most * 1.08)
  return { range: [0, top], step: top / TICKS }
}

/** Those that at least one design has. */
function overlays(comparison: Comparison): readonly Overlay[] {
  const { designs, frequencyHz } = comparison
  return quantities(comparison).flatMap(quantity => {
    const series = designs.flatMap(({ name, curves }) => {
      const values = quantity.of(curves)
      return values === undefined ? [] : [{ label: name, values }]
    })
    // what lies below the programme sets no scale
    const heard = series.flatMap(({ values }) => values.filter((_, at) => (frequencyHz[at] ?? 0) >= 16))
    return series.length === 0 ? [] : [{ ...quantity, series, ...rangeOf(quantity.unit, heard) }]
  })
}

export const comparisonFindings = (comparison: Comparison): readonly FindingChart[] =>
  overlays(comparison).flatMap(({ id, title, unit, series: [first, ...others], range, step }) =>
    first === undefined
      ? []
      : [
          {
            id: `compared-${id}`,
            title,
            note: `${unit} over frequency`,
            frequencyHz: comparison.frequencyHz,
            values: first.values,
            name: first.label,
            beside: others.map(({ label, values }) => ({ name: label, values })),
            range,
            step,
            dots: [],
            heightPx: 190
          }
        ]
  )

export function comparisonSvg(comparison: Comparison): string {
  const charts = overlays(comparison).map(
    ({ id, title, unit, series, range }): LineChart => ({
      id: `compared-${id}`,
      title,
      frequencyHz: comparison.frequencyHz,
      series,
      yLabel: title.split(' ')[0] ?? title,
      yUnit: unit,
      yRange: range
    })
  )
  const description = charts.map(({ title }) => title).join(', ')
  return stackedCharts({ id: 'comparison', title: 'Designs side by side', description }, charts.map(lineChart))
}
