/** The way a slot of so many legs takes along the walls, whatever its length: what sizing asks for again and again. */
import {
  edgeLine,
  interiorAngle,
  type Line,
  meeting,
  type Point2,
  type Polygon,
  signedArea
} from '../../../numeric/geometry/polygon.ts'
import { contains, rayLength } from '../../../numeric/geometry/polygon-distance.ts'
import { mitreShortening, roundedShortening } from '../../port/bends.ts'

/** The plane the slot runs in: an inner outline, the front being one of its edges, the slot on the edges that follow. */
export interface SlotPlane {
  readonly inner: Polygon
  readonly front: number
  /** Boards of the front [m]. */
  readonly frontM: number
}

interface SlotSize {
  readonly heightM: number
  readonly wallM: number
  /** Whether the outer corners of its bends are filled to a quarter round. */
  readonly isRound: boolean
}

/** Most edges a slot follows: floor, back, lid. */
export const MOST_LEGS = 3

export function meet(a: Line, b: Line): Point2 {
  return meeting(a, b) ?? b.at
}

interface Chain {
  /** Lines of the legs at a distance from the wall. */
  readonly lines: (inwards: number) => readonly Line[]
  readonly startInside: Line
  readonly startOutside: Line
}

function chainOf({ inner, front, frontM }: SlotPlane, legs: number): Chain {
  return {
    lines: inwards => Array.from({ length: legs }, (_, k) => edgeLine(inner, front + 1 + k, inwards)),
    startInside: edgeLine(inner, front),
    startOutside: edgeLine(inner, front, -frontM)
  }
}

/** Corners along the legs at a distance from the wall, without the end. */
function cornersAt(chain: Chain, inwards: number, start: Line): readonly Point2[] {
  const lines = chain.lines(inwards)
  return lines.map((line, k) => (k === 0 ? meet(start, line) : meet(lines[k - 1] as Line, line)))
}

const distance = (a: Point2, b: Point2) => Math.hypot(a.x - b.x, a.y - b.y)

function centreLine(chain: Chain, heightM: number) {
  const points = cornersAt(chain, heightM / 2, chain.startOutside)
  const before = points.slice(1).reduce((sum, point, k) => sum + distance(points[k] as Point2, point), 0)
  return { before, from: points[points.length - 1] as Point2 }
}

/** Turn of the flow at the start of leg k > 0. */
const turnAt = ({ inner, front }: SlotPlane, k: number) => Math.PI - interiorAngle(inner, front + 1 + k)

/** Where the inner side of the bend before a leg lies along its centre line, from the corner of the centre line. */
export const innerSide = (heightM: number, turnRad: number) => (heightM / 2) * Math.tan(Math.max(0, turnRad) / 2)

/** The last plate keeps at least this much of its own [m]. */
const LEAST_PLATE_M = 1e-3

/** The last leg reaches half a height past its bend, and past the plate of the leg before, or its own plate would be none. */
function shortestLast({ heightM, wallM }: SlotSize, turnRad: number): number {
  const plateM = turnRad > 0 ? (wallM * (1 + Math.abs(Math.cos(turnRad)))) / Math.sin(turnRad) : wallM
  return innerSide(heightM, turnRad) + Math.max(heightM / 2, plateM + LEAST_PLATE_M)
}

export interface SlotPath {
  readonly plane: SlotPlane
  readonly size: SlotSize
  readonly legs: number
  readonly turnsRad: readonly number[]
  /** What the air cuts off at the bends [m]. */
  readonly cutOffM: number
  /** Centre line up to the last bend, from the outer face of the front [m]. */
  readonly beforeM: number
  readonly from: Point2
  readonly last: Line
  /** Area that the slot takes up to the foot of that point; less than nothing before the first bend [m²]. */
  readonly bendAreaM2: number
  /** Shortest centre line [m]. */
  readonly shortestM: number
  /** Centre line to the wall that the mouth faces [m]. */
  readonly roomM: number
  readonly startInside: Line
  /** Lines of the legs at a distance from their walls. */
  readonly lines: Chain['lines']
  /** Corners on the wall, on the near and on the far face of the plates, without the ends. */
  readonly corners: {
    readonly wall: readonly Point2[]
    readonly near: readonly Point2[]
    readonly far: readonly Point2[]
  }
}

/** Between wall and far face, closed square to the last leg at a point. */
function bendArea({ wall, far }: SlotPath['corners'], { along }: Line, point: Point2): number {
  const foot = (corner: Point2): Point2 => {
    const share = (point.x - corner.x) * along.x + (point.y - corner.y) * along.y
    return { x: corner.x + along.x * share, y: corner.y + along.y * share }
  }
  const [wallEnd, farEnd] = [wall[wall.length - 1] as Point2, far[far.length - 1] as Point2]
  return signedArea([...wall, foot(wallEnd), foot(farEnd), ...far.toReversed()])
}

/** @throws nothing: where there is no room, `roomM` is short of `shortestM` */
export function slotPath(plane: SlotPlane, size: SlotSize, legs: number): SlotPath {
  const { heightM, wallM, isRound } = size
  const chain = chainOf(plane, legs)
  const { before, from } = centreLine(chain, heightM)
  const last = chain.lines(heightM / 2)[legs - 1] as Line
  const least = legs === 1 ? 0 : shortestLast(size, turnAt(plane, legs - 1))
  // The first leg starts outside the inner outline: its room counts from the inner face of the front.
  const inner = legs === 1 ? meet(chain.startInside, last) : from
  const room = distance(from, inner) + roomAlong(plane, last, inner, heightM)
  const turnsRad = Array.from({ length: legs - 1 }, (_, k) => turnAt(plane, k + 1))
  const cornersAtFace = (inwards: number) => cornersAt(chain, inwards, chain.startInside)
  const corners = { wall: cornersAtFace(0), near: cornersAtFace(heightM), far: cornersAtFace(heightM + wallM) }
  return {
    plane,
    size,
    legs,
    turnsRad,
    cutOffM: turnsRad.reduce((sum, turn) => sum + (isRound ? roundedShortening() : mitreShortening(turn)) * heightM, 0),
    beforeM: before,
    from,
    last,
    bendAreaM2: bendArea(corners, last, from),
    shortestM: before + least,
    roomM: before + room,
    startInside: chain.startInside,
    lines: chain.lines,
    corners
  }
}

/**
 * Free way along a leg, over the whole height of the channel, from a point on its centre line. Beside a sloped front one rim of
 * the channel starts before that point and the other behind it: a probe that starts in the board goes on to the air first.
 */
export function roomAlong({ inner }: SlotPlane, { along }: Line, from: Point2, heightM: number): number {
  const across = { x: -along.y, y: along.x }
  const probes = [-0.5, 0, 0.5].map(share => {
    const at = { x: from.x + across.x * heightM * share * 0.999999, y: from.y + across.y * heightM * share * 0.999999 }
    const start = { x: at.x + along.x * 1e-7, y: at.y + along.y * 1e-7 }
    const ahead = rayLength(inner, start, along)
    if (contains(inner, start) || !Number.isFinite(ahead)) return ahead
    const entered = { x: start.x + along.x * (ahead + 1e-7), y: start.y + along.y * (ahead + 1e-7) }
    return ahead + rayLength(inner, entered, along)
  })
  const room = Math.min(...probes)
  return Number.isFinite(room) ? room : 0
}
