/** Drawing exchange files: millimetres, layers, closed contours, true circles, and text that cannot break out of its line. */
import { createRequire } from 'node:module'
import { present } from '../../domain/present.ts'

/** Layer and colour number; a machine is set up by layer. What is never cut: SHEET, MARK, TABS, BEVEL, TEXT. */
const layers = { SHEET: 8, CUT: 5, HOLES: 1, MARK: 4, TABS: 30, TEXT: 7 } as const
/** A layer for each depth, diameter or angle, in millimetres or degrees with one decimal; TURNED is a pocket of the other face. */
const graded = { POCKET: 3, TURNED: 140, DRILL: 6, BEVEL: 2 } as const
export type DxfLayer = keyof typeof layers | `${keyof typeof graded}_${string}`

export const gradedLayer = (kind: keyof typeof graded, value: number): DxfLayer => `${kind}_${value.toFixed(1)}`

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
  readonly line: (layer: DxfLayer, from: DxfPoint, to: DxfPoint) => void
  /** @param upright  turned by a quarter, to be read from the right */
  readonly text: (x: number, y: number, height: number, content: string, upright?: boolean) => void
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
  const made = new Set<string>(Object.keys(layers))
  const known = (layer: DxfLayer): DxfLayer => {
    const kind = layer.split('_')[0] as keyof typeof graded
    if (!made.has(layer)) writer.addLayer(layer, graded[kind], 'CONTINUOUS')
    made.add(layer)
    return layer
  }
  return {
    contour: (layer, points) => {
      const layerName = known(layer)
      const vertices = points.map(({ x, y, bulge }) => ({
        point: point2d(exact(x), exact(y)),
        ...present({ bulge })
      }))
      writer.addLWPolyline(vertices, { layerName, flags: LWPolylineFlags.Closed })
    },
    circle: (layer, x, y, radius) => {
      writer.addCircle(point3d(exact(x), exact(y)), exact(radius), { layerName: known(layer) })
    },
    line: (layer, from, to) => {
      const at = ({ x, y }: DxfPoint) => point3d(exact(x), exact(y))
      writer.addLine(at(from), at(to), { layerName: known(layer) })
    },
    text: (x, y, height, content, upright = false) => {
      const line = plainLine(content)
      if (line === '') return
      const turn = upright ? { rotation: 90 } : {}
      writer.addText(point3d(exact(x), exact(y)), exact(height), line, { layerName: 'TEXT', ...turn })
    },
    end: () => writer.stringify()
  }
}
