/** Where round things stand on a face when the caller has not said so: in even rows, with the widest gaps. */

import type { PlaceOnPanel } from '../../../contract/boxes/box-hardware.ts'
import { bounds, centroid, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { lineGaps } from './front-gaps.ts'

interface Arrangement {
  readonly centres: readonly PlaceOnPanel[]
  readonly gapM: number
}

function inRows(clear: Polygon, diameters: readonly number[], rows: number, alongU: boolean): Arrangement {
  const box = bounds(clear)
  const [length, depth] = alongU ? [box.width, box.height] : [box.height, box.width]
  const perRow = Math.ceil(diameters.length / rows)
  const lines = Array.from({ length: rows }, (_, i) => diameters.slice(i * perRow, (i + 1) * perRow)).filter(
    line => line.length > 0
  )
  const tallest = lines.map(line => Math.max(...line))
  const rowGaps = lineGaps(depth, tallest)
  let gapM = rowGaps.edgeM
  let across = rowGaps.edgeM
  const centres = lines.flatMap((line, i) => {
    const gaps = lineGaps(length, line)
    gapM = Math.min(gapM, gaps.edgeM)
    const middle = across + (tallest[i] ?? 0) / 2
    across += rowGaps.betweenM + (tallest[i] ?? 0)
    let along = gaps.edgeM
    return line.map(d => {
      const place = along + d / 2
      along += gaps.betweenM + d
      return alongU ? { uM: box.left + place, vM: box.low + middle } : { uM: box.left + middle, vM: box.low + place }
    })
  })
  return { centres, gapM }
}

/**
 * Centres of circles on the clear part of a face, in the order given.
 *
 * @validity A rectangle; on another outline a single circle stands on the centre of area, more stand in its bounding rectangle
 *   and the clearance checks say whether they fit.
 * @source an engineering choice of this service
 */
export function arrange(clear: Polygon, diameters: readonly number[]): readonly PlaceOnPanel[] {
  if (diameters.length === 1 && clear.length !== 4) {
    const { x, y } = centroid(clear)
    return [{ uM: x, vM: y }]
  }
  const most = Math.min(diameters.length, 4)
  const attempts = Array.from({ length: most }, (_, i) => [
    inRows(clear, diameters, i + 1, true),
    inRows(clear, diameters, i + 1, false)
  ])
  const [first, ...rest] = attempts.flat()
  if (first === undefined) return []
  return rest.reduce((best, next) => (next.gapM > best.gapM + 1e-9 ? next : best), first).centres
}
