/** A slot that follows the inner walls of a box from its front: lengths, bends, the air it takes and its own plates. */
import {
  edgeLine,
  interiorAngle,
  type Line,
  leftOf,
  meeting,
  type Point2,
  type Polygon
} from '../../../numeric/polygon.ts'
import { contains, rayLength } from '../../../numeric/polygon-distance.ts'
import { mitreShortening } from '../../port/bends.ts'

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
}

interface Plate {
  /** Inner edge of the outline the plate runs along. */
  readonly edge: number
  /** Face to the channel from its start to its end, then the other face back. */
  readonly corners: readonly [Point2, Point2, Point2, Point2]
}

export interface SlotRun {
  readonly legs: number
  readonly centreLineM: number
  /** Centre line less what the air cuts off at the bends. */
  readonly acousticM: number
  readonly turnsRad: readonly number[]
  /** Between the walls of the box and the outer face of the plates. */
  readonly taken: Polygon
  /** The channel alone. */
  readonly channel: Polygon
  readonly plates: readonly Plate[]
  /** From the mouth straight on to the wall it faces. */
  readonly gapM: number
  readonly mouth: Point2
  /** Length of the last leg from the inner side of its bend (or from the front) to the mouth. */
  readonly lastLegM: number
}

/** Most edges a slot follows: floor, back, lid. */
export const MOST_LEGS = 3

function meet(a: Line, b: Line): Point2 {
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
const innerSide = (heightM: number, turnRad: number) => (heightM / 2) * Math.tan(Math.max(0, turnRad) / 2)

/**
 * Shortest and longest centre line of a slot with a number of legs: its last leg is at least half a height long past the
 * bend, and its mouth keeps a gap from the wall it faces.
 */
export function runBounds(plane: SlotPlane, { heightM }: SlotSize, legs: number, leastGapM: number) {
  const chain = chainOf(plane, legs)
  const { before, from } = centreLine(chain, heightM)
  const last = chain.lines(heightM / 2)[legs - 1] as Line
  const least = legs === 1 ? 0 : innerSide(heightM, turnAt(plane, legs - 1)) + heightM / 2
  // The first leg starts outside the inner outline: its room counts from the inner face of the front.
  const inner = legs === 1 ? meet(chain.startInside, last) : from
  const room = distance(from, inner) + roomAlong(plane, last, inner, heightM)
  return { shortest: before + least, longest: before + room - leastGapM }
}

/**
 * Free way along a leg, over the whole height of the channel, from a point on its centre line. Beside a sloped front one rim of
 * the channel starts before that point and the other behind it: a probe that starts in the board goes on to the air first.
 */
function roomAlong({ inner }: SlotPlane, { along }: Line, from: Point2, heightM: number): number {
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

const onLine = ({ at, along }: Line, foot: Point2): Point2 => {
  const share = (foot.x - at.x) * along.x + (foot.y - at.y) * along.y
  return { x: at.x + along.x * share, y: at.y + along.y * share }
}

/** The boards between channel and box, one a leg; each ends against the next, the last one at the mouth. */
function platesOf({ front }: SlotPlane, { heightM, wallM }: SlotSize, chain: Chain, mouth: Point2): readonly Plate[] {
  const lines = { near: chain.lines(heightM), far: chain.lines(heightM + wallM) }
  return lines.near.map((near, k): Plate => {
    const start = k === 0 ? chain.startInside : (lines.far[k - 1] as Line)
    const far = lines.far[k] as Line
    const next = lines.near[k + 1]
    const end = (line: Line) => (next === undefined ? onLine(line, mouth) : meet(line, next))
    return { edge: front + 1 + k, corners: [meet(start, near), end(near), end(far), meet(start, far)] }
  })
}

/**
 * The slot with a given centre line.
 *
 *   taken area between the walls and the outer face of the plates; every corner is where the moved lines of two walls meet
 *
 * @param lengthM  centre line from the outer face of the front to the mouth
 * @validity Plane walls; the mouth is cut square to its leg.
 * @source derived: intersection of parallel lines
 * @check  h 40, plate 18, inside 344 × 364 deep and high, front 18, 572 mm → two legs, 604 mm wide: 18.77715 L
 */
export function slotRun(plane: SlotPlane, size: SlotSize, legs: number, lengthM: number): SlotRun {
  const { heightM: h, wallM } = size
  const chain = chainOf(plane, legs)
  const { before, from } = centreLine(chain, h)
  const last = chain.lines(h / 2)[legs - 1] as Line
  const mouth = {
    x: from.x + last.along.x * (lengthM - before),
    y: from.y + last.along.y * (lengthM - before)
  }
  const face = (inwards: number): readonly Point2[] => [
    ...cornersAt(chain, inwards, chain.startInside),
    onLine(chain.lines(inwards)[legs - 1] as Line, mouth)
  ]
  const [wall, near, far] = [face(0), face(h), face(h + wallM)]
  const turnsRad = Array.from({ length: legs - 1 }, (_, k) => turnAt(plane, k + 1))
  const lastTurn = turnsRad[turnsRad.length - 1]
  return {
    legs,
    centreLineM: lengthM,
    acousticM: lengthM - turnsRad.reduce((sum, turn) => sum + mitreShortening(turn) * h, 0),
    turnsRad,
    taken: [...wall, ...far.toReversed()],
    channel: [...wall, ...near.toReversed()],
    plates: platesOf(plane, size, chain, mouth),
    gapM: roomAlong(plane, last, mouth, h),
    mouth,
    lastLegM: lengthM - before - (lastTurn === undefined ? 0 : innerSide(h, lastTurn))
  }
}

/** Clear height above the slot at its mouth, from its wall to the wall across. */
export function heightAtMouth({ inner, front }: SlotPlane, { mouth, legs }: SlotRun): number {
  const line = edgeLine(inner, front + legs)
  const inwards = { x: -line.along.y, y: line.along.x }
  return leftOf(line, mouth) + rayLength(inner, mouth, inwards)
}
