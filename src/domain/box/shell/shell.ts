/**
 * The shell of a box: a profile extruded along one axis, closed by two caps. Rectangular, wedge and prism are the same figure,
 * so that one kernel gives their exact volumes and panels.
 */
import type { PanelRole } from '../../../contract/boxes/words.ts'
import {
  edgeLine,
  interiorAngle,
  type Line,
  meeting,
  type Point2,
  type Polygon,
  signedArea
} from '../../../numeric/geometry/polygon.ts'
import { insetPolygon } from '../../../numeric/geometry/polygon-inset.ts'
import { DesignError } from '../../design-error.ts'
import { say } from '../../say.ts'

/** One wall of the profile: `layers` boards of `thicknessM`, set back by `recessM`. */
export interface Wall {
  readonly name: string
  readonly role: PanelRole
  readonly thicknessM: number
  readonly layers: number
  readonly recessM: number
}

interface Cap {
  readonly name: string
  readonly thicknessM: number
}

/** At vertex i meet wall i − 1 and wall i; the one named runs past the other, or both are mitred. */
export type Corner = 'before' | 'after' | 'mitre'

export interface Shell {
  /** Along which the profile is extruded: `x` with a profile in (y, z), `z` with a footprint in (x, y). */
  readonly axis: 'x' | 'z'
  /** Outer, anticlockwise [m]. */
  readonly profile: Polygon
  readonly walls: readonly Wall[]
  readonly corners: readonly Corner[]
  /** Outer length along the axis [m]. */
  readonly lengthM: number
  readonly caps: { readonly low: Cap; readonly high: Cap; readonly placed: 'between' | 'over' }
}

/** From the outer line of a wall to the inside. */
export const wallDepth = ({ thicknessM, layers, recessM }: Wall) => recessM + layers * thicknessM

export function wallOf({ walls }: Shell, index: number): Wall {
  const wall = walls[((index % walls.length) + walls.length) % walls.length]
  if (wall === undefined) throw new RangeError('a shell needs walls')
  return wall
}

export const clearLength = ({ lengthM, caps }: Shell) => lengthM - caps.low.thicknessM - caps.high.thicknessM

/** Inside of the walls. @throws DesignError `no-solution` when the boards leave no inside */
export function innerProfile(shell: Shell, field: string): Polygon {
  const inset = insetPolygon(shell.profile, shell.walls.map(wallDepth))
  if ('polygon' in inset && clearLength(shell) > 0) return inset.polygon
  const wall =
    'failure' in inset
      ? say('refused.no-inside', { wall: wallOf(shell, inset.edge).name, why: say(`refused.inset.${inset.failure}`) })
      : say('refused.caps-meet')
  throw new DesignError('no-solution', { field, detail: say('refused.the-box-has-no-inside', { wall }) })
}

/** The line that ends a wall at a vertex: the neighbour's outer or inner line, whichever the joint reaches to. */
function endLine(shell: Shell, inner: Polygon, vertexIndex: number, wallIndex: number): Line {
  const n = shell.profile.length
  const i = ((vertexIndex % n) + n) % n
  const corner = shell.corners[i]
  if (corner === 'mitre') {
    const from = shell.profile[i] as Point2
    const to = inner[i] as Point2
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    return { at: from, along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length } }
  }
  const isBefore = (((vertexIndex - 1) % n) + n) % n === ((wallIndex % n) + n) % n
  const neighbour = isBefore ? vertexIndex : vertexIndex - 1
  const through = (corner === 'before') === isBefore
  const convex = interiorAngle(shell.profile, i) <= Math.PI
  return edgeLine(shell.profile, neighbour, through === convex ? 0 : wallDepth(wallOf(shell, neighbour)))
}

/** Cross-section of one board of a wall in the plane of the profile. */
export interface Section {
  readonly wall: number
  readonly layer: number
  /** Outer start, outer end, inner end, inner start. */
  readonly corners: readonly [Point2, Point2, Point2, Point2]
}

export function wallSection(shell: Shell, inner: Polygon, wall: number, layer: number): Section {
  const { thicknessM, recessM } = wallOf(shell, wall)
  const outerLine = edgeLine(shell.profile, wall, recessM + layer * thicknessM)
  const innerLine = edgeLine(shell.profile, wall, recessM + (layer + 1) * thicknessM)
  const start = endLine(shell, inner, wall, wall)
  const end = endLine(shell, inner, wall + 1, wall)
  const at = (line: Line, other: Line, fallback: Point2) => meeting(line, other) ?? fallback
  const next = edgeLine(shell.profile, wall + 1).at
  return {
    wall,
    layer,
    corners: [
      at(outerLine, start, outerLine.at),
      at(outerLine, end, moved(next, outerLine, shell.profile, wall)),
      at(innerLine, end, moved(next, innerLine, shell.profile, wall)),
      at(innerLine, start, innerLine.at)
    ]
  }
}

/** End of a wall that continues straight into its neighbour: square across. */
function moved(end: Point2, line: Line, profile: Polygon, wall: number): Point2 {
  const { at } = edgeLine(profile, wall)
  return { x: end.x + line.at.x - at.x, y: end.y + line.at.y - at.y }
}

/** Length of the boards of a wall along the axis. */
export function boardLength(shell: Shell, wall: number): number {
  const betweenCaps = shell.caps.placed === 'over' || wallOf(shell, wall).recessM > 0
  return betweenCaps ? clearLength(shell) : shell.lengthM
}

/** Outline of the caps: the whole profile, or what is left between the walls. */
export function capProfile(shell: Shell): Polygon {
  if (shell.caps.placed === 'over') return shell.profile
  const inset = insetPolygon(
    shell.profile,
    shell.walls.map(wall => (wall.recessM > 0 ? 0 : wallDepth(wall)))
  )
  if ('polygon' in inset) return inset.polygon
  throw new DesignError('no-solution', { field: '', detail: say('refused.the-boards-leave-no-room-for') })
}

export interface ShellVolumes {
  readonly externalM3: number
  readonly grossM3: number
  readonly recessM3: number
}

/**
 * Volumes of a shell.
 *
 *   V_ext = A(profile)·L    V_gross = A(inner)·(L − t_low − t_high)    V_recess = A(hollow)·(L − t_low − t_high)
 *
 * @validity Exact for plane walls square to the profile. Thickness is measured square to each wall.
 * @source derived: prism volume; inner polygon from parallel lines
 * @check  640 × 400 mm, 380 mm deep below and 250 mm above, 18 mm → 61.13607 L
 */
export function shellVolumes(shell: Shell, inner: Polygon): ShellVolumes {
  const clear = clearLength(shell)
  const grossM3 = signedArea(inner) * clear
  const recessed = shell.walls.findIndex(({ recessM }) => recessM > 0)
  const outside =
    recessed < 0
      ? undefined
      : insetPolygon(
          shell.profile,
          shell.walls.map((wall, i) => (i === recessed ? wall.recessM : wallDepth(wall)))
        )
  const bare =
    recessed < 0
      ? undefined
      : insetPolygon(
          shell.profile,
          shell.walls.map((wall, i) => (i === recessed ? 0 : wallDepth(wall)))
        )
  const recessM3 =
    outside !== undefined && bare !== undefined && 'polygon' in outside && 'polygon' in bare
      ? (signedArea(bare.polygon) - signedArea(outside.polygon)) * clear
      : 0
  return { externalM3: signedArea(shell.profile) * shell.lengthM, grossM3, recessM3 }
}
