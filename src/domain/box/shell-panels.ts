/** The panels of a shell: blanks, tilted edges, and where each stands in the box. */
import { alongLine, bounds, edgeLine, type Line, type Point2, type Polygon, signedArea } from '../../numeric/polygon.ts'
import type { Direction3, PanelEdge, PanelPlace, PanelPoint, PanelRole, Point3 } from './panel.ts'
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

export interface Ends {
  readonly low: number
  readonly high: number
  readonly lowEdge: Omit<PanelEdge, 'edge'>
  readonly highEdge: Omit<PanelEdge, 'edge'>
}

/** Extent of a section along its wall, and the tilt at either end; corners as in {@link Section}. */
export function sectionEnds(line: Line, corners: Section['corners'], thicknessM: number): Ends {
  const [outerLow, outerHigh, innerHigh, innerLow] = corners.map(corner => alongLine(line, corner)) as [
    number,
    number,
    number,
    number
  ]
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

const tilted = (edges: readonly PanelEdge[]) => edges.filter(({ tiltDeg }) => tiltDeg > 0)

/** A board along a line of the profile plane, `inwards` from it, from `from` over `length` of the axis. */
export interface Strip {
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
function uprightBoard({ line, inwards, ends, from, length }: Strip) {
  const { along } = line
  const flipped = along.y > none
  const sign = flipped ? 1 : -1
  const origin = onStrip(line, flipped ? ends.low : ends.high, inwards)
  return {
    outline: rectangle(length, ends.high - ends.low),
    edges: tilted([
      { edge: 0, ...(flipped ? ends.lowEdge : ends.highEdge) },
      { edge: 2, ...(flipped ? ends.highEdge : ends.lowEdge) }
    ]),
    place: {
      origin: inBox('x', origin, flipped ? from + length : from),
      uAxis: direction(-sign, 0, 0),
      vAxis: direction(0, sign * along.x, sign * along.y)
    }
  }
}

/** In a footprint: u along the wall, v up. */
function standingBoard({ line, inwards, ends, from, length }: Strip) {
  return {
    outline: rectangle(ends.high - ends.low, length),
    edges: tilted([
      { edge: 1, ...ends.highEdge },
      { edge: 3, ...ends.lowEdge }
    ]),
    place: {
      origin: inBox('z', onStrip(line, ends.low, inwards), from),
      uAxis: direction(line.along.x, line.along.y, 0),
      vAxis: direction(0, 0, 1)
    }
  }
}

export const boardAlong = (axis: Shell['axis'], strip: Strip) =>
  axis === 'x' ? uprightBoard(strip) : standingBoard(strip)

function wallPanels(shell: Shell, inner: Polygon, wall: number): readonly BarePanel[] {
  const { name, role, thicknessM, layers, recessM } = wallOf(shell, wall)
  const length = boardLength(shell, wall)
  const from = length < shell.lengthM ? shell.caps.low.thicknessM : 0
  return Array.from({ length: layers }, (_, layer) => {
    const line = edgeLine(shell.profile, wall)
    const { corners } = wallSection(shell, inner, wall, layer)
    const ends = sectionEnds(line, corners, thicknessM)
    const shaped = boardAlong(shell.axis, { line, inwards: recessM + layer * thicknessM, ends, from, length })
    return { name, role, wall, layer, thicknessM, ...shaped, volumeM3: signedArea(corners) * length }
  })
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
    edges: [],
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
