/** The panels of a shell: blanks, tilted edges, and where each stands in the box. */
import type { PanelPoint } from '../../../contract/boxes/box-hardware.ts'
import type { PanelEdge, PanelPlace, Point3 } from '../../../contract/boxes/panel.ts'
import type { PanelRole } from '../../../contract/boxes/words.ts'
import {
  alongLine,
  bounds,
  edgeLine,
  interiorAngle,
  type Line,
  type Point2,
  type Polygon,
  signedArea
} from '../../../numeric/geometry/polygon.ts'
import { mapped } from '../../../numeric/tuple.ts'
import { type OwnArrises, ownArrises, withRounding } from './edge-rounding.ts'
import type { Direction3 } from './panel.ts'
import { boardLength, capProfile, type Section, type Shell, wallOf, wallSection } from './shell.ts'

/** A panel before material, cut-outs and mass. */
export interface BarePanel {
  readonly name: string
  readonly role: PanelRole
  /** The face it belongs to: wall index, or the cap. */
  readonly wall: number | 'low' | 'high' | 'inside'
  readonly layer: number
  readonly thicknessM: number
  readonly outline: readonly PanelPoint[]
  readonly edges: readonly PanelEdge[]
  readonly place: PanelPlace
  /** Wood of the section as it stands in the box, cut-outs not taken off [m³]. */
  readonly volumeM3: number
}

const none = 1e-9
const direction = (x: number, y: number, z: number): Direction3 => ({ x, y, z })

/** A point of the profile plane at a distance along the axis. */
export function inBox(axis: Shell['axis'], { x, y }: Point2, along: number): Point3 {
  return axis === 'x' ? { xM: along, yM: x, zM: y } : { xM: x, yM: y, zM: along }
}

interface Ends {
  readonly low: number
  readonly high: number
  readonly lowEdge: Omit<PanelEdge, 'edge'>
  readonly highEdge: Omit<PanelEdge, 'edge'>
}

/** Extent of a section along its wall, and the tilt at either end; corners as in {@link Section}. */
export function sectionEnds(line: Line, corners: Section['corners'], thicknessM: number): Ends {
  const [outerLow, outerHigh, innerHigh, innerLow] = mapped(corners, corner => alongLine(line, corner))
  const edge = (outerBeyond: number): Omit<PanelEdge, 'edge'> => ({
    tiltDeg: Math.abs(outerBeyond) < none ? 0 : (Math.atan(Math.abs(outerBeyond) / thicknessM) * 180) / Math.PI,
    longFace: Math.abs(outerBeyond) < none ? 'equal' : outerBeyond > 0 ? 'outer' : 'inner'
  })
  return {
    low: Math.min(outerLow, innerLow),
    high: Math.max(outerHigh, innerHigh),
    lowEdge: edge(innerLow - outerLow),
    highEdge: edge(outerHigh - innerHigh)
  }
}

const rectangle = (width: number, height: number): readonly PanelPoint[] => [
  { uM: 0, vM: 0 },
  { uM: width, vM: 0 },
  { uM: width, vM: height },
  { uM: 0, vM: height }
]

const worked = (edges: readonly PanelEdge[]) =>
  edges.filter(({ tiltDeg, roundingRadiusM }) => tiltDeg > 0 || roundingRadiusM !== undefined)

const square = (edge: number): PanelEdge => ({ edge, tiltDeg: 0, longFace: 'equal' })

/** Edges in the order of the outline: where the board ends along its wall, and at the caps. */
function edgesOf(ends: readonly [low: PanelEdge, high: PanelEdge], caps: readonly number[], finish: EdgeFinish) {
  const { own, thicknessM } = finish
  const [low, high] = ends
  return worked([
    withRounding(low, own.low, thicknessM),
    withRounding(high, own.high, thicknessM),
    ...caps.map(edge => withRounding(square(edge), own.caps, thicknessM))
  ]).toSorted((a, b) => a.edge - b.edge)
}

interface EdgeFinish {
  readonly own: OwnArrises
  readonly thicknessM: number
}
/** Of a board inside the box. */
const inside: EdgeFinish = { own: { low: false, high: false, caps: false }, thicknessM: 0 }

/** A board along a line of the profile plane, `inwards` from it, from `from` over `length` of the axis. */
interface Strip {
  readonly line: Line
  readonly inwards: number
  readonly ends: Ends
  readonly from: number
  readonly length: number
}

/** A point of a line at a distance along and a distance inwards of it. */
const onStrip = ({ at, along }: Line, foot: number, inwards: number): Point2 => ({
  x: at.x + along.x * foot - along.y * inwards,
  y: at.y + along.y * foot + along.x * inwards
})

/** In an upright profile: u along the width of the box, v up the wall (for floor and lid: to front and rear). */
function uprightBoard({ line, inwards, ends, from, length }: Strip, finish: EdgeFinish) {
  const { along } = line
  const flipped = along.y > none
  const sign = flipped ? 1 : -1
  const origin = onStrip(line, flipped ? ends.low : ends.high, inwards)
  return {
    outline: rectangle(length, ends.high - ends.low),
    edges: edgesOf(
      [
        { edge: flipped ? 0 : 2, ...ends.lowEdge },
        { edge: flipped ? 2 : 0, ...ends.highEdge }
      ],
      [1, 3],
      finish
    ),
    place: {
      origin: inBox('x', origin, flipped ? from + length : from),
      uAxis: direction(-sign, 0, 0),
      vAxis: direction(0, sign * along.x, sign * along.y)
    }
  }
}

/** In a footprint: u along the wall, v up. */
function standingBoard({ line, inwards, ends, from, length }: Strip, finish: EdgeFinish) {
  return {
    outline: rectangle(ends.high - ends.low, length),
    edges: edgesOf(
      [
        { edge: 3, ...ends.lowEdge },
        { edge: 1, ...ends.highEdge }
      ],
      [0, 2],
      finish
    ),
    place: {
      origin: inBox('z', onStrip(line, ends.low, inwards), from),
      uAxis: direction(line.along.x, line.along.y, 0),
      vAxis: direction(0, 0, 1)
    }
  }
}

export const boardAlong = (axis: Shell['axis'], strip: Strip, finish = inside) =>
  axis === 'x' ? uprightBoard(strip, finish) : standingBoard(strip, finish)

function wallPanels(shell: Shell, inner: Polygon, wall: number): readonly BarePanel[] {
  const { name, role, thicknessM, layers, recessM } = wallOf(shell, wall)
  const length = boardLength(shell, wall)
  const from = length < shell.lengthM ? shell.caps.low.thicknessM : 0
  return Array.from({ length: layers }, (_, layer) => {
    const line = edgeLine(shell.profile, wall)
    const { corners } = wallSection(shell, inner, wall, layer)
    const ends = sectionEnds(line, corners, thicknessM)
    const strip = { line, inwards: recessM + layer * thicknessM, ends, from, length }
    const shaped = boardAlong(shell.axis, strip, { own: ownArrises(shell, wall, layer), thicknessM })
    return { name, role, wall, layer, thicknessM, ...shaped, volumeM3: signedArea(corners) * length }
  })
}

/** A cap over the ends of the walls has every arris of its own; turning the outline round turns its edges too. */
function capEdges({ caps, profile }: Shell, count: number, thicknessM: number, mirrored: boolean) {
  if (caps.placed !== 'over') return []
  const convex = (vertex: number) => interiorAngle(profile, vertex % count) < Math.PI - 1e-9
  return Array.from({ length: count }, (_, edge) => {
    const own = mirrored ? (2 * count - 2 - edge) % count : edge
    return withRounding(square(edge), convex(own) && convex(own + 1), thicknessM)
  }).filter(({ roundingRadiusM }) => roundingRadiusM !== undefined)
}

/** Seen from outside: the right side and the lid as the profile lies, the left side and the floor mirrored. */
function capPanel(shell: Shell, end: 'low' | 'high'): BarePanel {
  const { name, thicknessM } = shell.caps[end]
  const profile = capProfile(shell)
  const box = bounds(profile)
  const upright = shell.axis === 'x'
  const mirrorsU = upright && end === 'low'
  const mirrorsV = !upright && end === 'low'
  const points = profile.map(({ x, y }) => ({
    uM: mirrorsU ? box.right - x : x - box.left,
    vM: mirrorsV ? box.high - y : y - box.low
  }))
  const mirrored = mirrorsU || mirrorsV
  const origin = { x: mirrorsU ? box.right : box.left, y: mirrorsV ? box.high : box.low }
  const uAxis = upright ? direction(0, mirrorsU ? -1 : 1, 0) : direction(1, 0, 0)
  const vAxis = upright ? direction(0, 0, 1) : direction(0, mirrorsV ? -1 : 1, 0)
  return {
    name,
    role: upright ? 'side' : end === 'low' ? 'bottom' : 'top',
    wall: end,
    layer: 0,
    thicknessM,
    outline: mirrored ? points.toReversed() : points,
    edges: capEdges(shell, points.length, thicknessM, mirrored),
    place: { origin: inBox(shell.axis, origin, end === 'low' ? 0 : shell.lengthM), uAxis, vAxis },
    volumeM3: signedArea(profile) * thicknessM
  }
}

/** Lid and floor first, then front and back, then the sides; a prism: caps, then walls as numbered. */
export function shellPanels(shell: Shell, inner: Polygon): readonly BarePanel[] {
  const walls = shell.walls.flatMap((_, wall) => wallPanels(shell, inner, wall))
  const caps = [capPanel(shell, 'low'), capPanel(shell, 'high')]
  const order: readonly PanelRole[] = ['top', 'bottom', 'front', 'back', 'wall', 'side']
  return [...walls, ...caps].toSorted((a, b) => order.indexOf(a.role) - order.indexOf(b.role))
}
