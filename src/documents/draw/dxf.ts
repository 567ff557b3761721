/** Drawing exchange files: millimetres, layers, closed contours, true circles, and text that cannot break out of its line. */
import { createRequire } from 'node:module'
import { present } from '../../domain/present.ts'

/** Layer and colour number; a machine is set up by layer. */
const layers = { SHEET: 8, CUT: 5, HOLES: 1, POCKET: 3, DRILL: 6, TEXT: 7 } as const
type DxfLayer = keyof typeof layers

export interface DxfPoint {
  /** [mm] */
  readonly x: number
  readonly y: number
  /** Tangent of a quarter of the arc to the next point; 0 for a straight line. */
  readonly bulge?: number
}

export interface DxfFile {
  readonly contour: (layer: DxfLayer, points: readonly DxfPoint[]) => void
  readonly circle: (layer: DxfLayer, x: number, y: number, radius: number) => void
  readonly text: (x: number, y: number, height: number, content: string) => void
  readonly end: () => string
}

const longestText = 120

/** One line without control characters, codes or escapes: a caller's name must not become a circle on the cut layer. */
export function plainLine(content: string): string {
  return content
    .toWellFormed()
    .replace(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]+/gu, ' ')
    .replaceAll('\\', '/')
    .replaceAll('^', "'")
    .replace(/%{2,}/g, '%')
    .slice(0, longestText)
    .toWellFormed()
    .trim()
}

/** Whole thousandths of a millimetre. */
const exact = (value: number) => Math.round(value * 1000) / 1000

/** Loaded when the first file is written: whoever asks for no file does not wait for its writer. */
const library = (): typeof import('@tarikjabiri/dxf') => createRequire(import.meta.url)('@tarikjabiri/dxf')

export function dxfFile(): DxfFile {
  const { DxfWriter, LWPolylineFlags, point2d, point3d, Units } = library()
  const writer = new DxfWriter()
  writer.setUnits(Units.Millimeters)
  for (const [name, colour] of Object.entries(layers)) writer.addLayer(name, colour, 'CONTINUOUS')
  return {
    contour: (layerName, points) => {
      const vertices = points.map(({ x, y, bulge }) => ({
        point: point2d(exact(x), exact(y)),
        ...present({ bulge })
      }))
      writer.addLWPolyline(vertices, { layerName, flags: LWPolylineFlags.Closed })
    },
    circle: (layerName, x, y, radius) => {
      writer.addCircle(point3d(exact(x), exact(y)), exact(radius), { layerName })
    },
    text: (x, y, height, content) => {
      const line = plainLine(content)
      if (line !== '') writer.addText(point3d(exact(x), exact(y)), exact(height), line, { layerName: 'TEXT' })
    },
    end: () => writer.stringify()
  }
}
