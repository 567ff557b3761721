/** Faces of a box free between the other panels, and the lines that hold them. */
import { bounds, edgeLength, edgeLine, leftOf } from '../../../numeric/geometry/polygon.ts'
import { clearLength, wallOf } from '../shell/shell.ts'
import { unmirrored } from '../slot/slot-plane.ts'
import type { BuiltSlot } from '../slot/slot-port.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import type { Mounted, MountedDriver } from '../solids/mounting.ts'

/** A face free between the other panels: along the axis of the box, and across. */
export interface FreeFace {
  readonly name: string
  readonly wall: number | 'low' | 'high'
  readonly alongM: number
  readonly acrossM: number
  readonly thicknessM: number
  readonly drivers: readonly MountedDriver[]
  /** From where along the axis battens may stand: 0 on a bare face, past a slot, or nowhere (Infinity). */
  readonly battensFromM: number
  /** Lines that hold it, from its low end along the axis. */
  readonly held: readonly number[]
}

const sameWall = ({ panels }: FittedBox, wall: FreeFace['wall']) =>
  panels.filter(panel => panel.wall === wall).map(({ place }) => place)

/** A slot that runs in the plane of the profile. */
export const alongSlot = ({ port, inside }: FittedBox): BuiltSlot | undefined =>
  port?.kind === 'slot' && port.space.placed.axis === inside.shell.axis ? port : undefined

/** A slot that runs along an end of the box, in another plane than the profile. */
export const crossingSlot = ({ port, inside }: FittedBox): BuiltSlot | undefined =>
  port?.kind === 'slot' && port.space.placed.axis !== inside.shell.axis ? port : undefined

/** How far from each end of the box a crossing slot reaches along the axis, with its wall [m]. */
export function crossingReach(built: FittedBox): { readonly low: number; readonly high: number } {
  const slot = crossingSlot(built)
  const first = slot?.run.taken[0]
  if (slot === undefined || first === undefined) return { low: 0, high: 0 }
  const { placed, heightM, wallM } = slot.space
  const reachM = heightM + wallM
  const isHigh = unmirrored(placed, first).x > built.inside.shell.lengthM / 2
  const isBoth = slot.run.legs > 2
  return { low: isHigh && !isBoth ? 0 : reachM, high: isHigh || isBoth ? reachM : 0 }
}

/** Walls of the box that a slot runs along, as edges of the profile; empty for one that runs in another plane. */
export function slotWalls(built: FittedBox): readonly number[] {
  const port = alongSlot(built)
  if (port === undefined) return []
  const { inside } = built
  const n = inside.inner.length
  const { plane, isMirrored } = port.space.placed
  return Array.from({ length: port.run.legs }, (_, k) => {
    const edge = (plane.front + 1 + k) % n
    return isMirrored ? (2 * n - 2 - edge) % n : edge
  })
}

/** Drivers and tubes on the boards of a face. */
function mountedOn(built: FittedBox, wall: FreeFace['wall']): readonly Mounted[] {
  const places = sameWall(built, wall)
  return built.mounted.filter(({ face }) => places.includes(face.place))
}

/**
 * Where battens start on a face that has `reach` of a slot before it; nowhere beside drivers and tubes, or on a face that a
 * divider meets.
 */
function battensFrom(built: FittedBox, wall: FreeFace['wall'], here: readonly Mounted[], reach: number): number {
  const isParted = built.divider !== undefined && !(typeof wall === 'number' && isWhole(built, wall))
  return here.length > 0 || isParted ? Number.POSITIVE_INFINITY : reach
}

/** Whether a wall lies in one chamber: no corner of the divider lies on it. */
function isWhole({ inside, divider }: FittedBox, wall: number): boolean {
  const line = edgeLine(inside.inner, wall)
  return divider?.parts.board.every(point => Math.abs(leftOf(line, point)) > 1e-9) ?? true
}

function freeWall(built: FittedBox, wall: number, covered: readonly number[], frames: readonly number[]): FreeFace {
  const { shell, inner } = built.inside
  const own = wallOf(shell, wall)
  const slot = built.port?.kind === 'slot' && covered.includes(wall) ? built.port.space : undefined
  const cheek = slot?.hasCheek ? [slot.widthM + slot.wallM / 2] : []
  const reach = slot === undefined ? 0 : slot.widthM + (slot.hasCheek ? slot.wallM : 0)
  const here = mountedOn(built, wall)
  return {
    name: own.name,
    wall,
    alongM: clearLength(shell),
    acrossM: edgeLength(inner, wall),
    thicknessM: own.thicknessM * own.layers,
    drivers: here.filter(each => each.kind === 'driver'),
    battensFromM: battensFrom(built, wall, here, reach),
    held: [...cheek, ...frames.filter(place => place >= reach)].toSorted((a, b) => a - b)
  }
}

function freeCap(built: FittedBox, end: 'low' | 'high'): FreeFace {
  const { shell, inner } = built.inside
  const { width, height } = bounds(inner)
  const here = mountedOn(built, end)
  return {
    name: shell.caps[end].name,
    wall: end,
    alongM: width,
    acrossM: height,
    thicknessM: shell.caps[end].thicknessM,
    drivers: here.filter(each => each.kind === 'driver'),
    battensFromM: battensFrom(built, end, here, 0),
    held: []
  }
}

/** @param frames  places of the braces from the inner face of the low cap */
export function freeFaces(built: FittedBox, frames: readonly number[]): readonly FreeFace[] {
  const covered = slotWalls(built)
  return [
    ...built.inside.shell.walls.map((_, wall) => freeWall(built, wall, covered, frames)),
    freeCap(built, 'low'),
    freeCap(built, 'high')
  ]
}

export interface Span {
  readonly from: number
  readonly length: number
}

/** A span shorter than this is stiff by itself [m]. */
const SHORTEST_BATTENED_M = 0.15

/** Whether a batten may stand in a span: half a board of the cheek reaches over its start. */
export const takesBattens = ({ battensFromM, thicknessM }: FreeFace, { from, length }: Span) =>
  from >= battensFromM - thicknessM && length >= SHORTEST_BATTENED_M

export function spansOf({ held, alongM }: FreeFace): readonly Span[] {
  const lines = [0, ...held, alongM]
  return lines.slice(1).map((to, i) => ({ from: lines[i] ?? 0, length: to - (lines[i] ?? 0) }))
}
