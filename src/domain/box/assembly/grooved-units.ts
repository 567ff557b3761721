/** Boards with their grooves and tongues as solids: what stands in a groove leaves by its open end alone. */
import type { Panel } from '../../../contract/boxes/panel.ts'
import { type Convex, cross, minus, unit, type Vector3 } from '../../../numeric/geometry/convex-distance.ts'
import { type Polygon, vertex } from '../../../numeric/geometry/polygon.ts'
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

/** A polygon behind the outer face, and as which it comes out at another depth. */
interface Layer {
  readonly fromM: number
  readonly toM: number
  readonly near: Polygon
  readonly far: Polygon
}

function slab({ place }: Pick<Panel, 'place'>, { fromM, toM, near, far }: Layer): readonly Convex[] {
  if (place === undefined || near.length < 3) return []
  const { outwards, at } = boardFrame(place)
  const corners = [...near.map(point => at(point, fromM)), ...far.map(point => at(point, toM))]
  const sides = near.flatMap((point, i): readonly Vector3[] => {
    const here = at(point, fromM)
    const along = minus(at(vertex(near, i + 1), fromM), here)
    const side = unit(cross(along, minus(at(vertex(far, i), toM), here)))
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
    .flatMap(({ board, at, depthM }) => {
      const near = rectangle(at)
      return slab(board, { near, far: near, fromM: board.thicknessM - depthM, toM: board.thicknessM })
    })

const pocketsOf = ({ cutOuts }: Panel) =>
  cutOuts.flatMap(cut => (cut.face === 'inner' ? [{ depthM: cut.rebateDepthM ?? 0, window: windowOf(cut) }] : []))

/** Of two faces with the same corners, the outline at a share of the way. */
const between = (outer: Polygon, inner: Polygon, share: number): Polygon =>
  outer.map(({ x, y }, i) => {
    const far = vertex(inner, i)
    return { x: x + (far.x - x) * share, y: y + (far.y - y) * share }
  })

const isAlike = (one: readonly Polygon[], other: readonly Polygon[]) =>
  one.length === other.length && one.every(({ length }, i) => length === other[i]?.length)

/** Layer by layer from outside: whole behind its pockets, what is left beside them; bevelled edges run through all. */
function piecesOf(panel: Panel): readonly Convex[] {
  const { thicknessM } = panel
  const [outer, inner] = [boardFace(panel, 'outer'), boardFace(panel, 'inner')]
  const pockets = pocketsOf(panel)
  const floors = [...new Set(pockets.map(({ depthM }) => thicknessM - depthM))].toSorted((a, b) => a - b)
  const depths = [0, ...floors, thicknessM]
  return depths.slice(1).flatMap((toM, i) => {
    const fromM = depths[i] ?? 0
    const windows = pockets.flatMap(({ depthM, window }) => (thicknessM - depthM < toM - 1e-9 ? [window] : []))
    const at = (depthM: number) => piecesWithout(between(outer, inner, depthM / thicknessM), windows)
    const [near, far] = [at(fromM), at(toM)]
    // A pocket at a bevel may leave other pieces at its floor than at its mouth: then what is left at the mouth.
    const ends = isAlike(near, far) ? near.map((each, k) => [each, far[k] ?? each]) : far.map(each => [each, each])
    return ends.flatMap(([one = [], other = []]) => slab(panel, { near: one, far: other, fromM, toM }))
  })
}

/** Of a board of the shell as it is cut; its body as the shell has it where nothing is cut for a joint. */
export function woodOf(name: string, body: Body, { boards }: CutBoards): readonly Convex[] {
  const panel = boards.get(name)
  return panel === undefined ? body.pieces.map(({ solid }) => solid) : piecesOf(panel)
}
