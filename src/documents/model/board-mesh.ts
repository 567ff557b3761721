/** A board with its bevels, its notches and its holes. */
import earcut, { flatten } from 'earcut'
import type { CutOut, Panel } from '../../contract/boxes/panel.ts'
import { isNotch, notchedFace } from '../../domain/box/shell/board-faces.ts'
import { type BoardFrame, boardFrame } from '../../domain/box/solids/solids.ts'
import { vector } from '../../numeric/geometry/convex-distance.ts'
import { bounds, type Point2, type Polygon, signedArea, vertex } from '../../numeric/geometry/polygon.ts'
import { inSpace, type Mesh, type MeshBuilder, meshBuilder, PARTS_OF_TURN } from './mesh.ts'
import { type HoleStep, layersOf } from './pocketed-mesh.ts'

/** In steps where it narrows. */
interface Hole {
  readonly steps: readonly HoleStep[]
}

function loopOf({ kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0 }: CutOut): Polygon {
  if (kind === 'circle') {
    return Array.from({ length: PARTS_OF_TURN }, (_, i) => {
      const angle = (2 * Math.PI * i) / PARTS_OF_TURN
      return { x: uM + (diameterM / 2) * Math.cos(angle), y: vM + (diameterM / 2) * Math.sin(angle) }
    })
  }
  const [w, h] = [widthM / 2, heightM / 2]
  return [
    { x: uM - w, y: vM - h },
    { x: uM + w, y: vM - h },
    { x: uM + w, y: vM + h },
    { x: uM - w, y: vM + h }
  ]
}

function holesOf(panel: Panel): readonly Hole[] {
  const { thicknessM } = panel
  const inside = panel.cutOuts.filter(cut => !isNotch(panel, cut))
  return inside
    .filter(({ rebateDepthM }) => rebateDepthM === undefined)
    .map(cut => {
      const rebate = inside.find(other => other.purpose === 'driver-rebate' && other.label === cut.label)
      const depthM = rebate?.rebateDepthM ?? 0
      const through = { fromM: depthM, toM: thicknessM, loop: loopOf(cut) }
      return { steps: rebate === undefined ? [through] : [{ fromM: 0, toM: depthM, loop: loopOf(rebate) }, through] }
    })
}

/** From the first point of a loop on, the one nearest to the lower left corner: two faces of a board start alike. */
function fromLowest(polygon: Polygon): Polygon {
  const { left, low } = bounds(polygon)
  const far = ({ x, y }: Point2) => Math.hypot(x - left, y - low)
  const start = polygon.reduce((best, point, i) => (far(point) < far(vertex(polygon, best)) - 1e-9 ? i : best), 0)
  return [...polygon.slice(start), ...polygon.slice(0, start)]
}

/** A flat face with holes, seen from outside or from inside. */
function flat(mesh: MeshBuilder, frame: BoardFrame, loops: readonly Polygon[], depthM: number, outside: boolean): void {
  const { vertices, holes, dimensions } = flatten(loops.map(loop => loop.map(({ x, y }) => [x, y])))
  const order = earcut(vertices, holes, dimensions)
  const points = loops.flat()
  const [a, b, c] = order.slice(0, 3).map(i => points[i]) as [Point2, Point2, Point2]
  const isAnticlockwise = signedArea([a, b, c]) > 0
  const turned = order.flatMap((_, i) => (i % 3 === 0 ? [order[i], order[i + 2], order[i + 1]] : [])) as number[]
  mesh.triangles(
    points.map(point => frame.at(point, depthM)),
    outside ? frame.outwards : inSpace(vector(0, 0, 0), [frame.outwards, -1]),
    isAnticlockwise === outside ? order : turned
  )
}

/** Round a loop from one depth to another; the wood lies on its left, seen from outside, or with `isHole` on its right. */
function wall(
  mesh: MeshBuilder,
  frame: BoardFrame,
  [near, far]: readonly [Polygon, Polygon],
  [from, to]: readonly [number, number],
  isHole = false
): void {
  near.forEach((_, i) => {
    const corners = [
      frame.at(vertex(near, i), from),
      frame.at(vertex(far, i), to),
      frame.at(vertex(far, i + 1), to),
      frame.at(vertex(near, i + 1), from)
    ]
    mesh.face(isHole ? corners.toReversed() : corners)
  })
}

/** Layers lie upon one another: what two of them share is inside the wood and seen by nobody. */
function layered(panel: Panel, mesh: MeshBuilder, frame: BoardFrame): void {
  const steps = holesOf(panel).flatMap(hole => hole.steps)
  for (const { fromM, toM, near, far, holes } of layersOf(panel, steps)) {
    flat(mesh, frame, [near, ...holes], fromM, true)
    flat(mesh, frame, [far, ...holes], toM, false)
    wall(mesh, frame, [near, far], [fromM, toM])
    for (const loop of holes) wall(mesh, frame, [loop, loop], [fromM, toM], true)
  }
}

/** @returns none for a part whose place is not known */
export function boardMesh(panel: Panel): Mesh | undefined {
  const { place, thicknessM } = panel
  if (place === undefined) return undefined
  const frame = boardFrame(place)
  const mesh = meshBuilder()
  if (panel.cutOuts.some(({ face }) => face === 'inner')) {
    layered(panel, mesh, frame)
    return mesh.end()
  }
  const outer = fromLowest(notchedFace(panel, 'outer'))
  const drawn = fromLowest(notchedFace(panel, 'inner'))
  // A notch that meets a bevel may leave one face a corner more: then the board is shown square.
  const inner = drawn.length === outer.length ? drawn : outer
  const holes = holesOf(panel)
  const rims = (index: 0 | -1) => holes.flatMap(({ steps }) => [steps.at(index)?.loop ?? []])
  flat(mesh, frame, [outer, ...rims(0)], 0, true)
  flat(mesh, frame, [inner, ...rims(-1)], thicknessM, false)
  wall(mesh, frame, [outer, inner], [0, thicknessM])
  for (const { steps } of holes) {
    steps.forEach(({ fromM, toM, loop }, i) => {
      wall(mesh, frame, [loop, loop], [fromM, toM], true)
      const next = steps[i + 1]
      if (next !== undefined) flat(mesh, frame, [loop, next.loop], toM, true)
    })
  }
  return mesh.end()
}
