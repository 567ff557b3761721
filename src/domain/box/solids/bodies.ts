/** What stands in a box, as bodies: drivers, tubes, slot, divider, cup, amplifier, and the boards around them. */
import type { Point3 } from '../../../contract/boxes/panel.ts'
import {
  type Convex,
  cross,
  minus,
  plus,
  unit,
  type Vector3,
  vector
} from '../../../numeric/geometry/convex-distance.ts'
import { vertex } from '../../../numeric/geometry/polygon.ts'
import { triangles } from '../../../numeric/geometry/triangles.ts'
import { boardFace } from '../shell/board-faces.ts'
import { chamberAt } from '../shell/divider.ts'
import { type Face, moved, profilePoint } from '../shell/face.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import { unmirrored } from '../slot/slot-plane.ts'
import type { BuiltSlot } from '../slot/slot-port.ts'
import type { FittedBox } from './fitted-box.ts'
import { driverShape, elbowShape, FLANGE_M, tubeShape } from './hardware-shapes.ts'
import type { MountedDriver, MountedTube } from './mounting.ts'
import { dividerBody, ledgeBodies } from './parting-bodies.ts'
import type { Shape } from './shape.ts'
import { bars, boardFrame, type Disc, drum, polytope, toDirection, toVector } from './solids.ts'
import { elbowRoute } from './tube-elbow.ts'

type BodyKind = 'driver' | 'tube' | 'slot' | 'divider' | 'brace' | 'batten' | 'cup' | 'amplifier' | 'wall'

interface Piece {
  /** Part of its body, where that has a name: `motor`. */
  readonly what?: 'motor' | 'basket' | 'flange' | 'cone'
  readonly solid: Convex
}

export interface Body {
  readonly name: string
  readonly kind: BodyKind
  readonly pieces: readonly Piece[]
  /** How it looks; boards are shown as the parts they are. */
  readonly shape?: Shape
  /** The way it goes through its face from outside; what has a bend or an inner flange goes in before the last board. */
  readonly inwards?: Vector3
  /** Name of the board it is set into or glued to. */
  readonly on?: string
  /** A driver whose basket and motor stand before its board. */
  readonly isOutside?: boolean
}

/** Of its hole: how wide a passive radiator is at its rear; no sheet gives it. Ours. */
const PASSIVE_REAR_SHARE = 0.5

/** Basket and cone of a passive radiator, narrowing to its rear. */
function passivePieces({ driver, face, at }: MountedDriver): readonly Piece[] {
  const { mountingDepthM, cutOutDiameterM = 0, rebateDepthM = 0, mount } = driver
  if (mountingDepthM === undefined) return []
  const rear = mountingDepthM + rebateDepthM
  const from = mount === 'reversed' ? 0 : face.thicknessM
  if (rear <= from) return []
  const sign = mount === 'reversed' ? -1 : 1
  const start = [sign * from, cutOutDiameterM * (1 - ((1 - PASSIVE_REAR_SHARE) * from) / rear)] as const
  const end = [sign * rear, PASSIVE_REAR_SHARE * cutOutDiameterM] as const
  return [{ what: 'basket', solid: roundBehind(face, at, start, end) }]
}

/** Least height of a motor, where nothing is given [m]. */
const LEAST_MOTOR_M = 5e-3

const disc = (centre: Point3, along: Vector3, diameterM: number): Disc => ({
  centre: toVector(centre),
  along,
  radius: diameterM / 2
})

/** A round body square to a face, between two depths behind its outer side. */
function roundBehind(face: Face, at: Point3, from: readonly [number, number], to: readonly [number, number]): Convex {
  const along = toDirection(face.inwards)
  const end = ([depthM, diameterM]: readonly [number, number]) =>
    disc(moved(at, face.inwards, depthM), along, diameterM)
  return drum(end(from), end(to))
}

/**
 * Flange before the board; basket from the hole to the motor, where the height of the motor is given; motor. A reversed driver
 * has basket and motor before the board, its flange under them. On a divider the way of the cone counts too: tubes pass before it.
 */
function driverBody(mounted: MountedDriver): Body {
  const { driver, face, at, label } = mounted
  const { mountingDepthM, magnetDiameterM, magnetHeightM, cutOutDiameterM = 0, flangeDiameterM } = driver
  const { rebateDepthM: sunk = 0, mount, xmaxM = 0 } = driver
  const sign = mount === 'reversed' ? -1 : 1
  const pieces: Piece[] = []
  if (flangeDiameterM !== undefined && sunk < FLANGE_M) {
    const solid = roundBehind(face, at, [sunk - FLANGE_M, flangeDiameterM], [0, flangeDiameterM])
    pieces.push({ what: 'flange', solid })
  }
  if (face.name === 'divider' && mount !== 'reversed') {
    const solid = roundBehind(face, at, [-FLANGE_M - xmaxM, cutOutDiameterM], [0, cutOutDiameterM])
    pieces.push({ what: 'cone', solid })
  }
  if (driver.kind === 'passive-radiator') pieces.push(...passivePieces(mounted))
  else if (mountingDepthM !== undefined && magnetDiameterM !== undefined) {
    const [rear, motorAt] = [mountingDepthM + sunk, mountingDepthM + sunk - (magnetHeightM ?? LEAST_MOTOR_M)]
    const from = mount === 'reversed' ? 0 : face.thicknessM
    if (magnetHeightM !== undefined && motorAt > from) {
      const narrows = (cutOutDiameterM - magnetDiameterM) / motorAt
      const start = [sign * from, cutOutDiameterM - narrows * from] as const
      pieces.push({ what: 'basket', solid: roundBehind(face, at, start, [sign * motorAt, magnetDiameterM]) })
    }
    const motor = [sign * Math.max(from, motorAt), magnetDiameterM] as const
    if (rear > from) pieces.push({ what: 'motor', solid: roundBehind(face, at, motor, [sign * rear, magnetDiameterM]) })
  }
  return {
    name: label,
    kind: 'driver',
    pieces,
    shape: driverShape(mounted),
    inwards: toDirection(face.inwards),
    on: face.name,
    isOutside: mount === 'reversed'
  }
}

/** Slices of a bend; the body falls short of the true one by 0.2 % of its outer radius. */
const SLICES = 12

interface Elbow {
  readonly pieces: readonly Convex[]
  /** Square to the way, from the inner side of the panel to the inner mouth. */
  readonly way: readonly Disc[]
}

function elbowOf(built: FittedBox, tube: MountedTube): Elbow {
  const { face, at, outerDiameterM: outer, port } = tube
  const radius = port.elbowRadiusM ?? 0
  const start = moved(at, face.inwards, face.thicknessM)
  const chamber = chamberAt(built.inside, built.divider, profilePoint(built.inside.shell.axis, start))
  const { firstM, secondM, towards } = elbowRoute(chamber, tube)
  const [inwards, aside] = [toDirection(face.inwards), toDirection(towards)]
  const bendFrom = moved(start, face.inwards, firstM)
  const centre = plus(toVector(bendFrom), aside, radius)
  const slice = (angle: number): Disc => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    return {
      centre: plus(plus(centre, aside, -radius * c), inwards, radius * s),
      along: plus(plus(vector(0, 0, 0), inwards, c), aside, s),
      radius: outer / 2
    }
  }
  const slices = Array.from({ length: SLICES + 1 }, (_, i) => slice((i * Math.PI) / 2 / SLICES))
  const last = slices[SLICES] as Disc
  const way = [
    ...(firstM > 0 ? [disc(start, inwards, outer)] : []),
    ...slices,
    ...(secondM > 0 ? [{ ...last, centre: plus(last.centre, aside, secondM) }] : [])
  ]
  const end = way.at(-1) as Disc
  const { flareRadiusM = 0 } = port
  const bell = drum(
    { ...end, centre: plus(end.centre, end.along, -flareRadiusM) },
    { ...end, radius: tube.widestM / 2 }
  )
  const legs = way.slice(1).map((next, i) => drum(way[i] as Disc, next))
  return { pieces: flareRadiusM > 0 ? [...legs, bell] : legs, way }
}

function tubeBody(built: FittedBox, tube: MountedTube): Body {
  const { face, at, label, outerDiameterM: outer, widestM, insideM, port } = tube
  const { flangeDiameterM = 0, flangeThicknessM = 0, flareRadiusM = 0 } = port
  const isFlanged = flangeDiameterM > widestM && flangeThicknessM > 0
  const straight = () => {
    const end = face.thicknessM + insideM
    const flange = roundBehind(face, at, [end - flangeThicknessM, flangeDiameterM], [end, flangeDiameterM])
    const body = roundBehind(face, at, [face.thicknessM, outer], [end, outer])
    const bell = roundBehind(face, at, [end - Math.min(flareRadiusM, insideM), outer], [end, widestM])
    return [body, ...(isFlanged ? [flange] : []), ...(flareRadiusM > 0 && insideM > 0 ? [bell] : [])]
  }
  /** An outer flare longer than its panel is thick shows behind it. */
  const throat = () => {
    const { thicknessM } = face
    if (flareRadiusM <= thicknessM) return []
    const open = flareRadiusM - Math.sqrt(2 * flareRadiusM * thicknessM - thicknessM ** 2)
    return [roundBehind(face, at, [thicknessM, outer + 2 * open], [flareRadiusM, outer])]
  }
  const body = (solids: readonly Convex[], shape: Shape): Body => ({
    name: label,
    kind: 'tube',
    pieces: [...solids, ...throat()].map(solid => ({ solid })),
    shape,
    on: face.name
  })
  if (port.elbowRadiusM === undefined)
    return { ...body(straight(), tubeShape(tube)), ...(isFlanged ? {} : { inwards: toDirection(face.inwards) }) }
  const { pieces, way } = elbowOf(built, tube)
  return body(pieces, elbowShape(tube, way))
}

/** Channel and plates of a slot as one: its air has to stay free as well. */
function slotBody({ space, run }: BuiltSlot): Body {
  const { placed, widthM, hasCheek, wallM } = space
  const taken = run.taken.map(point => unmirrored(placed, point))
  const to = placed.start + widthM + (hasCheek ? wallM : 0)
  return { name: 'port', kind: 'slot', pieces: bars(placed.axis, taken, placed.start, to).map(solid => ({ solid })) }
}

/** A board with its bevels, in convex pieces; an outline with a corner inwards is sawn square. */
export function boardBody(panel: Pick<BarePanel, 'name' | 'place' | 'thicknessM' | 'outline' | 'edges'>): Body {
  const { name, place, thicknessM } = panel
  const { outwards, at } = boardFrame(place)
  const [outer, inner] = [boardFace(panel, 'outer'), boardFace(panel, 'inner')]
  const parts = triangles(outer)
  const isWhole = parts.length === 1
  const pieces = parts.map(part => {
    const far = isWhole ? inner : part
    const corners = [...part.map(point => at(point, 0)), ...far.map(point => at(point, thicknessM))]
    const sides = part.map((point, i) => {
      const [next, below] = [at(vertex(part, i + 1), 0), at(vertex(far, i), thicknessM)]
      const here = at(point, 0)
      return unit(cross(minus(next, here), minus(below, here)))
    })
    return { solid: polytope(corners, [outwards, ...sides.filter(each => each !== undefined)]) }
  })
  return { name, kind: 'wall', pieces }
}

/** What stands in a box before braces and fittings find their places. */
export function hardwareBodies(built: FittedBox): readonly Body[] {
  return [
    ...built.mounted.map(each => (each.kind === 'driver' ? driverBody(each) : tubeBody(built, each))),
    ...(built.port?.kind === 'slot' ? [slotBody(built.port)] : []),
    ...dividerBody(built),
    ...ledgeBodies(built)
  ]
}

export const wallBodies = ({ panels }: FittedBox): readonly Body[] =>
  panels.filter(({ wall }) => wall !== 'inside').map(boardBody)
