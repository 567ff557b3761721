/** Each face of a box as a plate: where it rings with its braces and drivers, and how far it bends. */
import { bounds, edgeLength } from '../../numeric/polygon.ts'
import { type Batten, battenedFrequency } from './batten.ts'
import type { BuiltBox } from './build-box.ts'
import { frequencyWithDrivers, type RingMass } from './driver-on-plate.ts'
import { profilePoint } from './face.ts'
import type { Mounted, MountedDriver } from './mounting.ts'
import {
  clamped,
  type Plate,
  plateDeflection,
  plateFrequency,
  plateRigidity,
  supported,
  supportedFrequency
} from './plate.ts'
import type { Settled } from './settle.ts'
import { clearLength, wallOf } from './shell.ts'

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

const sameWall = ({ panels }: BuiltBox, wall: FreeFace['wall']) =>
  panels.filter(panel => panel.wall === wall).map(({ place }) => place)

/** Walls of the box that a slot runs along, as edges of the profile; empty for one that runs in another plane. */
function slotWalls({ port, inside }: BuiltBox): readonly number[] {
  if (port?.kind !== 'slot' || port.space.placed.axis !== inside.shell.axis) return []
  const n = inside.inner.length
  const { plane, isMirrored } = port.space.placed
  return Array.from({ length: port.run.legs }, (_, k) => {
    const edge = (plane.front + 1 + k) % n
    return isMirrored ? (2 * n - 2 - edge) % n : edge
  })
}

/** Drivers and tubes on the boards of a face. */
function mountedOn(built: BuiltBox, wall: FreeFace['wall']): readonly Mounted[] {
  const places = sameWall(built, wall)
  return built.mounted.filter(({ face }) => places.includes(face.place))
}

/** Where battens start on a face that has `reach` of a slot before it; nowhere beside drivers, tubes or a slot that crosses. */
function battensFrom({ port, inside }: BuiltBox, here: readonly Mounted[], reach: number): number {
  const crosses = port?.kind === 'slot' && port.space.placed.axis !== inside.shell.axis
  return here.length > 0 || crosses ? Number.POSITIVE_INFINITY : reach
}

function freeWall(built: BuiltBox, wall: number, covered: readonly number[], frames: readonly number[]): FreeFace {
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
    battensFromM: battensFrom(built, here, reach),
    held: [...cheek, ...frames.filter(place => place >= reach)].toSorted((a, b) => a - b)
  }
}

function freeCap(built: BuiltBox, end: 'low' | 'high'): FreeFace {
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
    battensFromM: battensFrom(built, here, 0),
    held: []
  }
}

/** @param frames  places of the braces from the inner face of the low cap */
export function freeFaces(built: BuiltBox, frames: readonly number[]): readonly FreeFace[] {
  const covered = slotWalls(built)
  return [
    ...built.inside.shell.walls.map((_, wall) => freeWall(built, wall, covered, frames)),
    freeCap(built, 'low'),
    freeCap(built, 'high')
  ]
}

interface Span {
  readonly from: number
  readonly length: number
}

/** Whether a batten may stand in a span: half a board of the cheek reaches over its start. */
export const takesBattens = ({ battensFromM, thicknessM }: FreeFace, { from, length }: Span) =>
  from >= battensFromM - thicknessM && length >= SHORTEST_BATTENED_M

export function spansOf({ held, alongM }: FreeFace): readonly Span[] {
  const lines = [0, ...held, alongM]
  return lines.slice(1).map((to, i) => ({ from: lines[i] ?? 0, length: to - (lines[i] ?? 0) }))
}

/** One span as a plate: x along the axis of the box. */
function spanPlate({ alongM, acrossM, thicknessM }: FreeFace, { length }: Span, { board }: Settled): Plate {
  return {
    xM: length,
    yM: acrossM,
    rigidity: plateRigidity(board, thicknessM, alongM >= acrossM),
    massPerAreaKgPerM2: board.densityKgPerM3 * thicknessM
  }
}

/** A plate turned so that its longer side is y. */
function longSideUp({ xM, yM, rigidity, massPerAreaKgPerM2 }: Plate): Plate {
  if (yM >= xM) return { xM, yM, rigidity, massPerAreaKgPerM2 }
  return { xM: yM, yM: xM, rigidity: { x: rigidity.y, y: rigidity.x, twist: rigidity.twist }, massPerAreaKgPerM2 }
}

function ringsIn(face: FreeFace, span: Span, { inside }: BuiltBox): readonly RingMass[] {
  return face.drivers.flatMap(({ driver, centre, face: own, at }) => {
    const { massKg, screwCircleDiameterM, cutOutDiameterM = 0 } = driver
    if (massKg === undefined) return []
    const clear = bounds(own.clear)
    const isWall = typeof face.wall === 'number'
    const along = isWall
      ? profilePoint(inside.shell.axis, at).along - inside.shell.caps.low.thicknessM
      : centre.uM - clear.left
    const uIsAlong = inside.shell.axis === 'x'
    const across = isWall && !uIsAlong ? centre.uM - clear.left : centre.vM - clear.low
    if (along < span.from || along > span.from + span.length) return []
    const radiusM = (screwCircleDiameterM ?? cutOutDiameterM) / 2
    return [{ massKg, radiusM, xM: along - span.from, yM: Math.min(face.acrossM, Math.max(0, across)) }]
  })
}

const battenOf = ({ board, fixed }: Settled): Batten => ({
  widthM: fixed.thicknessM,
  heightM: BATTEN_HEIGHT_M,
  elasticModulusPa: board.alongPa,
  densityKgPerM3: board.densityKgPerM3
})
/** A span shorter than this is stiff by itself. */
const SHORTEST_BATTENED_M = 0.15
export const BATTEN_HEIGHT_M = 60e-3

/** Lowest frequency over the spans, edges free to turn, with drivers or battens. */
export function bracedFrequency(face: FreeFace, battens: number, built: BuiltBox, settled: Settled): number {
  return Math.min(
    ...spansOf(face).map(span => {
      const plate = spanPlate(face, span, settled)
      if (battens === 0 || !takesBattens(face, span)) return frequencyWithDrivers(plate, ringsIn(face, span, built))
      const { globalHz, splitHz } = battenedFrequency(longSideUp(plate), battenOf(settled), battens)
      return Math.min(globalHz, splitHz)
    })
  )
}

interface FaceBending {
  readonly largestM: number
  readonly displacedM3: number
}

/** Edge fixity one half: the mean of supported and clamped, on every span and every part between battens. */
export function faceBending(face: FreeFace, battens: number, settled: Settled, pressurePa: number): FaceBending {
  const parts = spansOf(face).map(span => {
    const plate = longSideUp(spanPlate(face, span, settled))
    const divided = takesBattens(face, span) ? battens + 1 : 1
    const part = { ...plate, yM: plate.yM / divided }
    const [loose, fixed] = [plateDeflection(part, supported), plateDeflection(part, clamped)]
    return {
      largestM: ((loose.largestMPerPa + fixed.largestMPerPa) / 2) * pressurePa,
      displacedM3: ((loose.meanMPerPa + fixed.meanMPerPa) / 2) * pressurePa * part.xM * part.yM * divided
    }
  })
  return {
    largestM: Math.max(...parts.map(({ largestM }) => largestM)),
    displacedM3: parts.reduce((sum, { displacedM3 }) => sum + displacedM3, 0)
  }
}

/** The bare face, without braces and drivers. */
export function bareFrequencies(face: FreeFace, settled: Settled) {
  const plate = spanPlate(face, { from: 0, length: face.alongM }, settled)
  return { supportedHz: supportedFrequency(plate), clampedHz: plateFrequency(plate, clamped) }
}
