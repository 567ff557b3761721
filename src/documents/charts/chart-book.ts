/** All charts of one enclosure in one SVG, one below the other. */
import { size } from '../draw/chart-frame.ts'
import { svgDocument } from '../draw/svg.ts'
import { type ChartCurves, type ChartLimits, responseCharts } from './response-charts.ts'

export function chartBook(curves: ChartCurves, limits: ChartLimits, title: string): string {
  const charts = responseCharts(curves, limits)
  return svgDocument(
    {
      id: 'charts',
      title,
      description: `${charts.length} charts: ${charts.map(({ name }) => name.replace('-', ' ')).join(', ')}.`
    },
    { width: size.width, height: charts.length * size.height },
    ...charts.map(({ svg }, index) =>
      svg.replace('<svg xmlns="http://www.w3.org/2000/svg"', `<svg y="${index * size.height}"`)
    )
  )
}
