/** Several drawings in one SVG, one below the other. */
import { type Language, told } from '../../domain/say.ts'
import { placedBelow, svgDocument } from '../draw/svg.ts'
import type { Drawing } from '../panels/panel-drawing.ts'

/** In the millimetres of the book. */
const placed = (svg: string, y: number): string =>
  placedBelow(svg, y).replace(/ width="([\d.]+)mm" height="([\d.]+)mm"/, ' width="$1" height="$2"')

export function drawingBook(drawings: readonly Drawing[], title: string, language: Language): string {
  const gap = 6
  const width = Math.max(...drawings.map(({ widthM }) => widthM * 1000), 1)
  const tops = drawings.map((_, index) =>
    drawings.slice(0, index).reduce((sum, { heightM }) => sum + heightM * 1000 + gap, 0)
  )
  const height = Math.max(...drawings.map(({ heightM }, index) => (tops[index] ?? 0) + heightM * 1000), 1)
  const names = drawings.map(({ name }) => name).join(', ')
  const description = told(language, 'draw.book', { count: drawings.length, names })
  return svgDocument(
    { id: 'book', title, description },
    { width, height, unit: 'mm' },
    ...drawings.map(({ svg }, index) => placed(svg, tops[index] ?? 0))
  )
}
