/** Boards with their grooves and tongues as solids: what stands in a groove leaves by its open end alone. */
import type { Panel } from '../../../contract/boxes/panel.ts'
import { type Convex, cross, minus, unit, type Vector3 } from '../../../numeric/geometry/convex-distance.ts'
import { edgeLine, leftPart, type Polygon } from '../../../numeric/geometry/polygon.ts'
import { piecesWithout } from '../../../numeric/geometry/polygon-window.ts'
import { boardFace, windowOf } from '../shell/board-faces.ts'
import type { Body } from '../solids/bodies.ts'
import { boardFrame, polytope } from '../solids/solids.ts'
import type { Rectangle } from './joint-cuts.ts'

/** A tongue in its groove, in the frame of the board that bears it, as that is cut. */
export interface Tongue {
  readonly name: string
  readonly board: Panel
  readonly at: Rectangle
  readonly depthM: number
}

/** Boards of the shell by name, as they are cut, and the tongues of what stands inside. */
export interface CutBoards {
  readonly boards: ReadonlyMap<string, Panel>
  readonly tongues: readonly Tongue[]
}

/** Of a polygon from one depth behind the outer face to another. */
function slab({ place }: Pick<Panel, 'place'>, polygon: Polygon, fromM: number, toM: number): readonly Convex[] {
  if (place === undefined || polygon.length < 3) return []
  const { outwards, at } = boardFrame(place)
  const corners = [fromM, toM].flatMap(depth => polygon.map(point => at(point, depth)))
  const sides = polygon.flatMap((point, i): readonly Vector3[] => {
    const next = polygon[(i + 1) % polygon.length] ?? point
    const side = unit(cross(minus(at(next, 0), at(point, 0)), outwards))
    return side === undefined ? [] : [side]
  })
  return [polytope(corners, [outwards, ...sides])]
}

const rectangle = ({ uM, vM, widthM, heightM }: Rectangle): Polygon =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1]
  ].map(([u = 0, v = 0]) => ({ x: uM + (u * widthM) / 2, y: vM + (v * heightM) / 2 }))

/** What of a part stands in grooves, and no more. */
export const tonguesOf = (name: string, { tongues }: CutBoards): readonly Convex[] =>
  tongues
    .filter(tongue => tongue.name === name)
    .flatMap(({ board, at, depthM }) => slab(board, rectangle(at), board.thicknessM - depthM, board.thicknessM))

const pocketsOf = ({ cutOuts }: Panel) =>
  cutOuts.flatMap(cut => (cut.face === 'inner' ? [{ depthM: cut.rebateDepthM ?? 0, window: windowOf(cut) }] : []))

/** Layer by layer from outside: whole behind its pockets, what is left beside them; of a bevelled edge only what both faces have. */
function piecesOf(panel: Panel): readonly Convex[] {
  const { thicknessM, edges } = panel
  const [outer, inner] = [boardFace(panel, 'outer'), boardFace(panel, 'inner')]
  const isSquare = edges.every(({ tiltDeg }) => tiltDeg === 0)
  const whole = isSquare ? inner : outer.reduce((left, _, i) => leftPart(left, edgeLine(outer, i)), inner)
  const pockets = pocketsOf(panel)
  const floors = [...new Set(pockets.map(({ depthM }) => thicknessM - depthM))].toSorted((a, b) => a - b)
  const depths = [0, ...floors, thicknessM]
  return depths.slice(1).flatMap((toM, i) => {
    const fromM = depths[i] ?? 0
    const open = pockets.filter(({ depthM }) => thicknessM - depthM < toM - 1e-9)
    const left = piecesWithout(
      whole,
      open.map(({ window }) => window)
    )
    return left.flatMap(each => slab(panel, each, fromM, toM))
  })
}

/** Of a board of the shell as it is cut; its body as the shell has it where nothing is cut for a joint. */
export function woodOf(name: string, body: Body, { boards }: CutBoards): readonly Convex[] {
  const panel = boards.get(name)
  return panel === undefined ? body.pieces.map(({ solid }) => solid) : piecesOf(panel)
}
