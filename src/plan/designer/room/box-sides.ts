/** Outer sides of a box for an inner volume, on the ways along which the layout grows it; closed form, a few microseconds. */
import type { Strategy } from '../../../contract/boxes/words.ts'
import type { Ranges } from '../../../domain/box/boot/size-limits.ts'
import { pathOf } from '../../../domain/box/layout/size-path.ts'

export interface Sides {
  readonly width: number
  readonly height: number
  /** At the floor. */
  readonly depth: number
}

export interface Walls {
  readonly boardM: number
  /** By how much the front stands back behind the edges round it. */
  readonly recessM: number
  readonly frontM: number
  /** Lean of the back of a wedge [rad]; 0 of an upright one. */
  readonly leanRad: number
}

/** Clear depth at half the height, for walls that many sizes are tried with. */
function innerDepth({ boardM, recessM, frontM, leanRad }: Walls): (sides: Sides) => number {
  const [backM, slope] = [boardM / Math.cos(leanRad), Math.tan(leanRad)]
  return ({ height, depth }) => depth - recessM - frontM - backM - (height / 2) * slope
}

export const innerDepthM = (walls: Walls, sides: Sides): number => innerDepth(walls)(sides)

/**
 * Empty inside of a box or a wedge that leans back, of walls that many sizes are tried with.
 *
 *   V = (w − 2t)·(h − 2t)·(d − r − f − t/cos θ − (h/2)·tan θ)
 *
 * @returns m³; 0 where the boards leave no inside
 * @source derived: a trapezoid of height h − 2t whose mean depth lies at h/2
 * @check  1000 × 400 × 500 mm of 18 mm: 964 × 364 × 464 mm = 162.8 L
 */
export function insideM3(walls: Walls): (sides: Sides) => number {
  const { boardM } = walls
  const depthOf = innerDepth(walls)
  return sides => {
    const w = sides.width - 2 * boardM
    const h = sides.height - 2 * boardM
    const d = depthOf(sides)
    return w > 0 && h > 0 && d > 0 ? w * h * d : 0
  }
}

/** What the box takes of the space. */
export const outerM3 = ({ leanRad }: Walls, { width, height, depth }: Sides): number =>
  width * height * (depth - (height / 2) * Math.tan(leanRad))

const isSpan = ({ width, height, depth }: Ranges) =>
  width.max >= width.min && height.max >= height.min && depth.max >= depth.min

/** A volume is met within this share. */
const SAME_VOLUME = 1e-4
const MOST_STEPS = 40

/** One way of growing from the smallest to the largest box, worked out once for all volumes. */
export interface Growth {
  readonly sides: (share: number) => Sides
  readonly heldM3: (sides: Sides) => number
  readonly leastM3: number
  readonly mostM3: number
}

/** @returns none where the ranges leave no size */
export function growthOf(walls: Walls, ranges: Ranges, strategy: Strategy): Growth | undefined {
  if (!isSpan(ranges)) return undefined
  const sides = pathOf(strategy, ranges, walls.boardM)
  const heldM3 = insideM3(walls)
  return { sides, heldM3, leastM3: heldM3(sides(0)), mostM3: heldM3(sides(1)) }
}

/** @returns the sides at which the inside has the volume; none where it has it nowhere */
export function sidesAt({ sides, heldM3, leastM3, mostM3 }: Growth, volumeM3: number): Sides | undefined {
  if (mostM3 < volumeM3 || leastM3 > volumeM3 * (1 + SAME_VOLUME)) return undefined
  let [low, high] = [0, 1]
  for (let step = 0; step < MOST_STEPS; step++) {
    const middle = (low + high) / 2
    const tried = sides(middle)
    const ratio = heldM3(tried) / volumeM3
    if (Math.abs(ratio - 1) < SAME_VOLUME) return tried
    if (ratio < 1) low = middle
    else high = middle
  }
  return sides(high)
}
