/** Each face of a box as a plate: where it rings with its braces and drivers, and how far it bends. */
import { bounds } from '../../../numeric/geometry/polygon.ts'
import type { BoardProperties } from '../../material/board-properties.ts'
import type { BoxTask } from '../request/box-task.ts'
import { profilePoint } from '../shell/face.ts'
import type { FittedBox } from '../solids/fitted-box.ts'
import { type Batten, battenedFrequency, widestPart } from './batten.ts'
import { BATTEN_HEIGHT_M, bendingShare, type SpanBattens } from './batten-places.ts'
import { frequencyWithDrivers, type RingMass } from './driver-on-plate.ts'
import type { FreeFace, Span } from './free-face.ts'
import {
  clamped,
  type Plate,
  plateDeflection,
  plateFrequency,
  plateRigidity,
  supported,
  supportedFrequency
} from './plate.ts'

/** One span as a plate: x along the axis of the box. */
function spanPlate({ alongM, acrossM, thicknessM }: FreeFace, { length }: Span, { board }: BoxTask): Plate {
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

function ringsIn(face: FreeFace, span: Span, { inside }: FittedBox): readonly RingMass[] {
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

const battenOf = ({ board, fixed }: BoxTask): Batten => ({
  widthM: fixed.thicknessM,
  heightM: BATTEN_HEIGHT_M,
  elasticModulusPa: board.alongPa,
  densityKgPerM3: board.densityKgPerM3
})

const linesOf = ({ battens }: SpanBattens) =>
  battens.map(batten => ({ placeM: batten.placeM, share: bendingShare(batten) }))

/** Lowest frequency over the spans, edges free to turn, with drivers or battens. */
export function bracedFrequency(
  face: FreeFace,
  spans: readonly SpanBattens[],
  built: FittedBox,
  resolved: BoxTask
): number {
  return Math.min(
    ...spans.map(each => {
      const plate = spanPlate(face, each.span, resolved)
      if (each.battens.length === 0) return frequencyWithDrivers(plate, ringsIn(face, each.span, built))
      const { globalHz, splitHz } = battenedFrequency(longSideUp(plate), battenOf(resolved), linesOf(each))
      return Math.min(globalHz, splitHz)
    })
  )
}

interface FaceBending {
  readonly largestM: number
  readonly displacedM3: number
}

/** Sides and thickness tell a plate of one board; plywood has its grain along the first side or not. */
const plateKey = ({ xM, yM, rigidity }: Plate) => `${xM} ${yM} ${rigidity.x} ${rigidity.y}`

/**
 * What is worked out of a plate, by its board, as long as its task lives: faces come in pairs, and each number of frames and
 * each turn of planning asks for all of them again.
 */
function ofPlate<Figures>(workOut: (plate: Plate) => Figures) {
  const known = new WeakMap<BoardProperties, Map<string, Figures>>()
  return (board: BoardProperties, plate: Plate): Figures => {
    const plates = known.get(board) ?? new Map<string, Figures>()
    known.set(board, plates)
    const key = plateKey(plate)
    const figures = plates.get(key) ?? workOut(plate)
    plates.set(key, figures)
    return figures
  }
}

/** Edge fixity one half: the mean of supported and clamped. */
const halfHeldDeflection = ofPlate(plate => {
  const [loose, fixed] = [plateDeflection(plate, supported), plateDeflection(plate, clamped)]
  return {
    largestMPerPa: (loose.largestMPerPa + fixed.largestMPerPa) / 2,
    meanMPerPa: (loose.meanMPerPa + fixed.meanMPerPa) / 2
  }
})

const clampedFrequency = ofPlate(plate => plateFrequency(plate, clamped))

/** Half held, on every span; each part between battens as the widest of them. */
export function faceBending(
  face: FreeFace,
  spans: readonly SpanBattens[],
  resolved: BoxTask,
  pressurePa: number
): FaceBending {
  const parts = spans.map(each => {
    const plate = longSideUp(spanPlate(face, each.span, resolved))
    const part = { ...plate, yM: widestPart(linesOf(each), plate.yM) }
    const { largestMPerPa, meanMPerPa } = halfHeldDeflection(resolved.board, part)
    return { largestM: largestMPerPa * pressurePa, displacedM3: meanMPerPa * pressurePa * plate.xM * plate.yM }
  })
  return {
    largestM: Math.max(...parts.map(({ largestM }) => largestM)),
    displacedM3: parts.reduce((sum, { displacedM3 }) => sum + displacedM3, 0)
  }
}

/** The bare face, without braces and drivers. */
export function bareFrequencies(face: FreeFace, resolved: BoxTask) {
  const plate = spanPlate(face, { from: 0, length: face.alongM }, resolved)
  return { supportedHz: supportedFrequency(plate), clampedHz: clampedFrequency(resolved.board, plate) }
}
