/** Curves of several designs over each other: for a page of any width, and as one SVG. */
import type { ComparedCurves, Comparison } from '../../contract/enclosures/comparison.ts'
import { type Language, told } from '../../domain/say.ts'
import { stackedCharts } from '../charts/chart-book.ts'
import type { FindingChart } from '../charts/finding-chart.ts'
import { roundUp } from '../charts/response-charts.ts'
import type { LineChart } from '../draw/chart-frame.ts'
import { lineChart } from '../draw/line-chart.ts'

interface Quantity {
  readonly id: string
  readonly title: string
  readonly axis: string
  readonly unit: string
  readonly of: (curves: ComparedCurves) => readonly number[] | undefined
}

const quantities = ({ place }: Comparison, language: Language): readonly Quantity[] => {
  const at = place === 'seat' ? 'seat' : 'half-space'
  const level = told(language, 'chart.level-axis')
  return [
    {
      id: 'level',
      title: told(language, `compare.level-${at}`),
      axis: level,
      unit: 'dB',
      of: ({ levelDb }) => levelDb
    },
    {
      id: 'most',
      title: told(language, `compare.most-${at}`),
      axis: level,
      unit: 'dB',
      of: ({ mostLevelDb }) => mostLevelDb
    },
    {
      id: 'travel',
      title: told(language, 'compare.travel'),
      axis: told(language, 'compare.travel-axis'),
      unit: 'mm',
      of: ({ coneExcursionM }) => inThousandths(coneExcursionM)
    },
    {
      id: 'air',
      title: told(language, 'chart.air-speed'),
      axis: told(language, 'chart.air-speed-axis'),
      unit: 'm/s',
      of: ({ portAirSpeedMPerS }) => portAirSpeedMPerS
    },
    {
      id: 'delay',
      title: told(language, 'chart.group-delay'),
      axis: told(language, 'chart.delay-axis'),
      unit: 'ms',
      of: ({ groupDelayS }) => inThousandths(groupDelayS)
    },
    {
      id: 'impedance',
      title: told(language, 'chart.impedance-axis'),
      axis: told(language, 'chart.impedance-axis'),
      unit: 'Ω',
      of: ({ impedanceOhm }) => impedanceOhm
    }
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
function overlays(comparison: Comparison, language: Language): readonly Overlay[] {
  const { designs, frequencyHz } = comparison
  return quantities(comparison, language).flatMap(quantity => {
    const series = designs.flatMap(({ name, curves }) => {
      const values = quantity.of(curves)
      return values === undefined ? [] : [{ label: name, values }]
    })
    // what lies below the programme sets no scale
    const heard = series.flatMap(({ values }) => values.filter((_, at) => (frequencyHz[at] ?? 0) >= 16))
    return series.length === 0 ? [] : [{ ...quantity, series, ...rangeOf(quantity.unit, heard) }]
  })
}

export const comparisonFindings = (comparison: Comparison, language: Language): readonly FindingChart[] =>
  overlays(comparison, language).flatMap(({ id, title, unit, series: [first, ...others], range, step }) =>
    first === undefined
      ? []
      : [
          {
            language,
            id: `compared-${id}`,
            title,
            note: told(language, 'compare.over-frequency', { unit }),
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

export function comparisonSvg(comparison: Comparison, language: Language): string {
  const charts = overlays(comparison, language).map(
    ({ id, title, axis, unit, series, range }): LineChart => ({
      language,
      id: `compared-${id}`,
      title,
      frequencyHz: comparison.frequencyHz,
      series,
      yLabel: axis,
      yUnit: unit,
      yRange: range
    })
  )
  const description = charts.map(({ title }) => title).join(', ')
  return stackedCharts({ id: 'comparison', title: told(language, 'compare.title'), description }, charts.map(lineChart))
}
