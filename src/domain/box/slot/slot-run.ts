/** A slot of a length along its path: the air it takes and its own plates. */
import {
  edgeLine,
  type Line,
  leftOf,
  type Point2,
  type Polygon,
  signedArea
} from '../../../numeric/geometry/polygon.ts'
import { rayLength } from '../../../numeric/geometry/polygon-distance.ts'
import { innerSide, meet, roomAlong, type SlotPath, type SlotPlane } from './slot-path.ts'

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

const onLine = ({ at, along }: Line, foot: Point2): Point2 => {
  const share = (foot.x - at.x) * along.x + (foot.y - at.y) * along.y
  return { x: at.x + along.x * share, y: at.y + along.y * share }
}

/** The boards between channel and box, one a leg; each ends against the next, the last one at the mouth. */
function platesOf({ plane, size, lines, startInside }: SlotPath, mouth: Point2): readonly Plate[] {
  const { heightM, wallM } = size
  const [nearLines, farLines] = [lines(heightM), lines(heightM + wallM)]
  return nearLines.map((near, k): Plate => {
    const start = k === 0 ? startInside : (farLines[k - 1] as Line)
    const far = farLines[k] as Line
    const next = nearLines[k + 1]
    const end = (line: Line) => (next === undefined ? onLine(line, mouth) : meet(line, next))
    return { edge: plane.front + 1 + k, corners: [meet(start, near), end(near), end(far), meet(start, far)] }
  })
}

function mouthOf({ from, last, beforeM }: SlotPath, lengthM: number): Point2 {
  return {
    x: from.x + last.along.x * (lengthM - beforeM),
    y: from.y + last.along.y * (lengthM - beforeM)
  }
}

type Face = keyof SlotPath['corners']

/** One face of the run from the front to its end. */
function faceTo({ corners, lines, legs, size: { heightM, wallM } }: SlotPath, face: Face, mouth: Point2) {
  const inwards = face === 'wall' ? 0 : face === 'near' ? heightM : heightM + wallM
  return [...corners[face], onLine(lines(inwards)[legs - 1] as Line, mouth)]
}

const between = (one: readonly Point2[], other: readonly Point2[]): Polygon => [...one, ...other.toReversed()]

/** Area of the box's section that a slot of a length takes [m²]. */
export function takenArea(path: SlotPath, lengthM: number): number {
  const mouth = mouthOf(path, lengthM)
  return Math.abs(signedArea(between(faceTo(path, 'wall', mouth), faceTo(path, 'far', mouth))))
}

/** The same by the length beyond the last bend, along which the strip keeps its depth: for sizing. */
export function quickTakenArea({ beforeM, bendAreaM2, size: { heightM, wallM } }: SlotPath, lengthM: number): number {
  return bendAreaM2 + (heightM + wallM) * (lengthM - beforeM)
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
export function slotRun(path: SlotPath, lengthM: number): SlotRun {
  const { plane, legs, last, turnsRad, cutOffM, beforeM } = path
  const { heightM } = path.size
  const mouth = mouthOf(path, lengthM)
  const wall = faceTo(path, 'wall', mouth)
  const lastTurn = turnsRad[turnsRad.length - 1]
  return {
    legs,
    centreLineM: lengthM,
    acousticM: lengthM - cutOffM,
    turnsRad,
    taken: between(wall, faceTo(path, 'far', mouth)),
    channel: between(wall, faceTo(path, 'near', mouth)),
    plates: platesOf(path, mouth),
    gapM: roomAlong(plane, last, mouth, heightM),
    mouth,
    lastLegM: lengthM - beforeM - (lastTurn === undefined ? 0 : innerSide(heightM, lastTurn))
  }
}

/** Clear height above the slot at its mouth, from its wall to the wall across. */
export function heightAtMouth({ inner, front }: SlotPlane, { mouth, legs }: SlotRun): number {
  const line = edgeLine(inner, front + legs)
  const inwards = { x: -line.along.y, y: line.along.x }
  return leftOf(line, mouth) + rayLength(inner, mouth, inwards)
}
