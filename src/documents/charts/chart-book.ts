/** Charts in one SVG, one below the other. */
import { told } from '../../domain/say.ts'
import { size } from '../draw/chart-frame.ts'
import { placedBelow, svgDocument } from '../draw/svg.ts'
import { type ChartCurves, type ChartLimits, responseCharts } from './response-charts.ts'

/** @param charts  each of the usual size */
export const stackedCharts = (heading: Parameters<typeof svgDocument>[0], charts: readonly string[]): string =>
  svgDocument(
    heading,
    { width: size.width, height: charts.length * size.height },
    ...charts.map((svg, index) => placedBelow(svg, index * size.height))
  )

/** All charts of one enclosure. */
export function chartBook(curves: ChartCurves, limits: ChartLimits): string {
  const { language } = limits
  const charts = responseCharts(curves, limits)
  const names = charts.map(({ title }) => title).join(', ')
  const description = told(language, 'chart.book', { count: charts.length, names })
  return stackedCharts(
    { id: 'charts', title: told(language, 'chart.response'), description },
    charts.map(({ svg }) => svg)
  )
}
