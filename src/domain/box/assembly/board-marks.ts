/** What stands against which face of a board: lines to mark it by, and the screws that go in there. */
import type { Panel, PanelMark } from '../../../contract/boxes/panel.ts'
import { dot, minus, type Vector3 } from '../../../numeric/geometry/convex-distance.ts'
import { type Point2, type Polygon, vertex } from '../../../numeric/geometry/polygon.ts'
import { insideStretches } from '../../../numeric/geometry/polygon-distance.ts'
import { mapped } from '../../../numeric/tuple.ts'
import { boardFace } from '../shell/board-faces.ts'
import { boardFrame, toDirection, toVector } from '../solids/solids.ts'
import { screwPlaces } from './joint-screws.ts'

/** Nearer to a face than this is on it, and a shorter touch is none [m]. */
const ON_FACE_M = 1e-5
const SHORTEST_TOUCH_M = 5e-3

/** A board whose two faces and edges are known in the box. */
interface PlacedBoard {
  readonly panel: Panel
  readonly faces: { readonly outer: Polygon; readonly inner: Polygon }
  /** Each edge as a strip: its ends on the outer and on the inner face. */
  readonly edges: readonly (readonly [Vector3, Vector3, Vector3, Vector3])[]
  /** A point of the box in the frame of the board, and how deep behind its outer face. */
  readonly inFrame: (point: Vector3) => Point2 & { readonly depth: number }
}

function placedBoard(panel: Panel): PlacedBoard | undefined {
  const { place, thicknessM } = panel
  if (place === undefined) return undefined
  const { outwards, at } = boardFrame(place)
  const [start, u, v] = [toVector(place.origin), toDirection(place.uAxis), toDirection(place.vAxis)]
  const faces = { outer: boardFace(panel, 'outer'), inner: boardFace(panel, 'inner') }
  const edges = faces.outer.map((_, i) => {
    const [a, b] = [at(vertex(faces.outer, i), 0), at(vertex(faces.outer, i + 1), 0)]
    return [a, b, at(vertex(faces.inner, i), thicknessM), at(vertex(faces.inner, i + 1), thicknessM)] as const
  })
  const inFrame = (point: Vector3) => {
    const offset = minus(point, start)
    return { x: dot(offset, u), y: dot(offset, v), depth: -dot(offset, outwards) }
  }
  return { panel, faces, edges, inFrame }
}

const middle = (a: Point2, b: Point2): Point2 => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
/** A nanometre is no wood. */
const clean = (metres: number) => Math.round(metres * 1e9) / 1e9
const point = ({ x, y }: Point2) => ({ uM: clean(x), vM: clean(y) })

const shellRoles: readonly Panel['role'][] = ['top', 'bottom', 'front', 'back', 'side', 'wall']
export const isShellBoard = ({ role }: Panel): boolean => shellRoles.includes(role)

/** Strips are glued. */
export const isStrip = ({ name }: Panel): boolean => name.startsWith('batten') || name.startsWith('ledge')

/** Screwed from outside through a single board of the shell into the edge of another board; battens are glued. */
function screwsInto(board: Panel, other: Panel, isSingle: boolean, from: Point2, to: Point2): PanelMark['screws'] {
  if (!isSingle || !isShellBoard(board) || isStrip(other)) return []
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  return screwPlaces(length)
    .map(along =>
      point({ x: from.x + ((to.x - from.x) * along) / length, y: from.y + ((to.y - from.y) * along) / length })
    )
    .filter(({ uM, vM }) => !board.cutOuts.some(cut => reaches(cut, uM, vM)))
}

/** Wood left between a screw and a hole [m]. */
const WEB_M = 0.01

function reaches(
  { kind, uM, vM, diameterM = 0, widthM = 0, heightM = 0 }: Panel['cutOuts'][number],
  u: number,
  v: number
) {
  if (kind === 'circle') return Math.hypot(uM - u, vM - v) < diameterM / 2 + WEB_M
  return Math.abs(uM - u) < widthM / 2 + WEB_M && Math.abs(vM - v) < heightM / 2 + WEB_M
}

/** Parts of a stretch that have wood under them: on the face, and not over a window. */
function onWood({ faces, panel }: PlacedBoard, face: PanelMark['face'], from: Point2, to: Point2) {
  const windows = panel.cutOuts
    .filter(({ kind, rebateDepthM }) => kind === 'rectangle' && rebateDepthM === undefined)
    .flatMap(({ uM, vM, widthM = 0, heightM = 0 }) => {
      const corner = (i: number, k: number) => ({ x: uM + (i * widthM) / 2, y: vM + (k * heightM) / 2 })
      return insideStretches([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], from, to)
    })
  return windows.reduce(
    (left, [start, end]) =>
      left.flatMap(([low, high]): (readonly [number, number])[] =>
        end <= low || start >= high
          ? [[low, high]]
          : [...(start > low ? [[low, start] as const] : []), ...(end < high ? [[end, high] as const] : [])]
      ),
    insideStretches(faces[face], from, to)
  )
}

/** A mark with the board that bears it, the one that stands there, and by which of its edges. */
export interface Touch {
  readonly board: number
  readonly other: number
  readonly edge: number
  readonly mark: PanelMark
}

type EdgeMark = Pick<Touch, 'edge' | 'mark'>

/** Edges of another board that lie flat on a face of this one, as far as they lie on it. */
function marksOf(board: PlacedBoard, other: PlacedBoard, name: string, isSingle: boolean): readonly EdgeMark[] {
  const { thicknessM } = board.panel
  return other.edges.flatMap((corners, edge) => {
    const [a, b, c, d] = mapped(corners, board.inFrame)
    const on = (depth: number) => [a, b, c, d].every(each => Math.abs(each.depth - depth) < ON_FACE_M)
    const face = on(thicknessM) ? ('inner' as const) : on(0) ? ('outer' as const) : undefined
    if (face === undefined) return []
    const [from, to] = [middle(a, c), middle(b, d)]
    const [along, across] = [
      { x: to.x - from.x, y: to.y - from.y },
      { x: c.x - a.x, y: c.y - a.y }
    ]
    const length = Math.hypot(along.x, along.y)
    if (length < SHORTEST_TOUCH_M) return []
    const widthM = clean(Math.abs(along.x * across.y - along.y * across.x) / length)
    return onWood(board, face, from, to)
      .filter(([start, end]) => (end - start) * length > SHORTEST_TOUCH_M)
      .map(([start, end]) => {
        const at = (share: number) => ({ x: from.x + along.x * share, y: from.y + along.y * share })
        const screws = face === 'inner' ? screwsInto(board.panel, other.panel, isSingle, at(start), at(end)) : []
        return { edge, mark: { part: name, face, from: point(at(start)), to: point(at(end)), widthM, screws } }
      })
  })
}

/**
 * Every touch of an edge and a face, in the order of the parts.
 *
 * @param names  of the parts, each its own
 * @param isLoose  what comes off again is screwed by no joint
 * @source derived: an edge that lies in the plane of a face and over it stands against it
 */
export function touchesOf(
  parts: readonly Panel[],
  names: readonly string[],
  isLoose: (panel: Panel) => boolean = () => false
): readonly Touch[] {
  const placed = parts.map(placedBoard)
  return placed.flatMap((board, i) => {
    if (board === undefined) return []
    const isSingle = parts.filter(({ name }) => name === board.panel.name).length === 1
    return placed.flatMap((other, k) =>
      other === undefined || k === i
        ? []
        : marksOf(
            board,
            other,
            names[k] ?? other.panel.name,
            isSingle && !isLoose(board.panel) && !isLoose(other.panel)
          ).map(each => ({ board: i, other: k, ...each }))
    )
  })
}
