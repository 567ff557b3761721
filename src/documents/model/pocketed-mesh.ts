/** A board with pockets in its inner face, layer by layer: each layer a closed body, the pockets cut out of those they reach. */
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { notchedFace, windowOf } from '../../domain/box/shell/board-faces.ts'
import { type Polygon, signedArea, vertex } from '../../numeric/geometry/polygon.ts'
import { insideDistance } from '../../numeric/geometry/polygon-distance.ts'
import { withoutRectangles } from '../../numeric/geometry/polygon-window.ts'
import { mapped } from '../../numeric/tuple.ts'

/** A part of a layer: its outline on both its faces, and what is cut right through it. */
interface LayerPart {
  readonly fromM: number
  readonly toM: number
  readonly near: Polygon
  readonly far: Polygon
  readonly holes: readonly Polygon[]
}

/** A hole in its depth: the same outline from one depth to the next. */
export interface HoleStep {
  readonly fromM: number
  readonly toM: number
  readonly loop: Polygon
}

const isPocket = ({ face }: CutOut) => face === 'inner'

/** Depths behind the outer face at which something begins or ends. */
function depthsOf({ thicknessM, cutOuts }: Panel, steps: readonly HoleStep[]): readonly number[] {
  const floors = cutOuts.filter(isPocket).map(({ rebateDepthM = 0 }) => thicknessM - rebateDepthM)
  const all = [0, thicknessM, ...floors, ...steps.flatMap(({ fromM, toM }) => [fromM, toM])]
  return [...new Set(all.map(depth => Math.round(depth * 1e9) / 1e9))].toSorted((a, b) => a - b)
}

/** Of two faces with the same corners, the outline between them. */
const between = (outer: Polygon, inner: Polygon, share: number): Polygon =>
  outer.map(({ x, y }, i) => {
    const far = vertex(inner, i)
    return { x: x + (far.x - x) * share, y: y + (far.y - y) * share }
  })

const contains = (outline: Polygon, [point]: Polygon) => point !== undefined && insideDistance(outline, point) > 0

/** What is cut for joints alone; through holes lie beside it. */
export function layersOf(panel: Panel, steps: readonly HoleStep[]): readonly LayerPart[] {
  const { thicknessM, cutOuts } = panel
  const [outer, drawn] = mapped(['outer', 'inner'], face => notchedFace(panel, face))
  const inner = drawn.length === outer.length ? drawn : outer
  const depths = depthsOf(panel, steps)
  return depths.slice(1).flatMap((toM, i) => {
    const fromM = depths[i] ?? 0
    const open = cutOuts.filter(cut => isPocket(cut) && thicknessM - (cut.rebateDepthM ?? 0) < toM - 1e-9)
    const loopsAt = (depthM: number) =>
      withoutRectangles(between(outer, inner, depthM / thicknessM), open.map(windowOf))
    const [near, far] = [loopsAt(fromM), loopsAt(toM)]
    const through = steps.filter(step => step.fromM < toM - 1e-9 && step.toM > fromM + 1e-9).map(({ loop }) => loop)
    const holes = [...near.filter(loop => signedArea(loop) < 0).map(loop => loop.toReversed()), ...through]
    return near.flatMap((loop, k): readonly LayerPart[] => {
      if (signedArea(loop) < 0) return []
      const other = far[k]
      const own = holes.filter(hole => contains(loop, hole))
      return [{ fromM, toM, near: loop, far: other?.length === loop.length ? other : loop, holes: own }]
    })
  })
}
