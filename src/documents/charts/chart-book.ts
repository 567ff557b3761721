/** Charts in one SVG, one below the other. */
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
export function chartBook(curves: ChartCurves, limits: ChartLimits, title: string): string {
  const charts = responseCharts(curves, limits)
  const description = `${charts.length} charts: ${charts.map(({ name }) => name.replace('-', ' ')).join(', ')}.`
  return stackedCharts(
    { id: 'charts', title, description },
    charts.map(({ svg }) => svg)
  )
}
