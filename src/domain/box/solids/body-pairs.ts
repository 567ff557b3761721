/** Every two bodies of a box against each other: how far apart, or how deep in each other. */
import { type Convex, convexDistance, overlapDepth, wayOutByAxes } from '../../../numeric/geometry/convex-distance.ts'
import { present } from '../../present.ts'
import type { Body } from './bodies.ts'
import { clearanceRules, type Gap, gap, type Named, passes, type RoomRule } from './clearances.ts'

/** A depth up to which glued or leaning bodies only touch [m]. */
const CONTACT_M = 1e-5

/** Distance of the boxes round two bodies: a lower bound of their own. */
function boundsApart(a: Convex, b: Convex): number {
  const gap = (axis: 'x' | 'y' | 'z') => Math.max(0, b.low[axis] - a.high[axis], a.low[axis] - b.high[axis])
  return Math.hypot(gap('x'), gap('y'), gap('z'))
}

/** Negative: how deep they stand in each other. */
function gapOf(a: Convex, b: Convex, withinM: number): number {
  const least = boundsApart(a, b)
  if (least > withinM) return least
  // Boards that lie against each other are the many: an axis parts them at once.
  const out = wayOutByAxes(a, b)
  if (out < CONTACT_M && Math.max(0, -out) >= withinM) return Math.max(0, -out)
  const apart = convexDistance(a, b)
  if (apart > 0) return apart
  const depth = overlapDepth(a, b)
  return depth > CONTACT_M ? -depth : 0
}

const apart: RoomRule = { needM: 0, why: 'room.one-place' }
const motors: RoomRule = { needM: 20e-3, why: 'room.motor-to-motor' }

function ruleFor(a: Body, b: Body, motorMotor: boolean): RoomRule {
  const kinds = [a.kind, b.kind]
  if (kinds.includes('driver') && kinds.includes('tube')) return clearanceRules.motorToTube
  return motorMotor ? motors : apart
}

type Piece = Body['pieces'][number]

interface PairGap {
  /** Negative: how deep they stand in each other. */
  readonly gapM: number
  readonly rule: RoomRule
  readonly one: Piece
  readonly other: Piece
}

/** The pair of pieces that falls shortest of its rule; none where a body has no pieces. */
function worstPair(a: Body, b: Body): PairGap | undefined {
  let worst: PairGap | undefined
  for (const one of a.pieces) {
    for (const other of b.pieces) {
      const rule = ruleFor(a, b, one.what === 'motor' && other.what === 'motor')
      const gapM = gapOf(one.solid, other.solid, rule.needM)
      if (worst === undefined || gapM - rule.needM < worst.gapM - worst.rule.needM) worst = { gapM, rule, one, other }
    }
  }
  return worst
}

/** Whether the boxes round two bodies reach into each other in every direction: most boards lie square and need no more. */
const boundsMeet = (a: Convex, b: Convex) =>
  a.high.x - b.low.x > CONTACT_M &&
  b.high.x - a.low.x > CONTACT_M &&
  a.high.y - b.low.y > CONTACT_M &&
  b.high.y - a.low.y > CONTACT_M &&
  a.high.z - b.low.z > CONTACT_M &&
  b.high.z - a.low.z > CONTACT_M

/** How deep does not matter here: an axis that parts them up to contact, or a distance, decides. */
export const solidsOverlap = (a: Convex, b: Convex): boolean =>
  boundsMeet(a, b) && wayOutByAxes(a, b) >= CONTACT_M && convexDistance(a, b) === 0

export function overlaps(a: Body, b: Body): boolean {
  return a.pieces.some(one => b.pieces.some(other => solidsOverlap(one.solid, other.solid)))
}

/** Least distance of two bodies [m], negative where they overlap. */
export const bodyGap = (a: Body, b: Body, withinM: number): number =>
  Math.min(...a.pieces.flatMap(one => b.pieces.map(other => gapOf(one.solid, other.solid, withinM))))

const named = ({ name }: Body, { what }: Piece): Named => ({ name, ...present({ part: what }) })

/** A row for each pair that comes closer than it may; boards of the shell are made for each other and not compared. */
export function pairGaps(bodies: readonly Body[]): readonly Gap[] {
  return bodies.flatMap((a, i) =>
    bodies.slice(i + 1).flatMap(b => {
      if (a.kind === 'wall' && b.kind === 'wall') return []
      const worst = worstPair(a, b)
      if (worst === undefined || passes(worst.gapM, worst.rule.needM)) return []
      const { gapM, rule, one, other } = worst
      return [gap('clearance.pair', [named(a, one), named(b, other)], gapM, rule)]
    })
  )
}
