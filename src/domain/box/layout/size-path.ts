/** A way from the smallest to the largest box, along which sizing looks for its volume. */
import type { Strategy } from '../../../contract/boxes/words.ts'
import { type Axis, axes } from '../boot/axes.ts'
import type { Ranges } from '../boot/size-limits.ts'
import type { OuterSizes } from './size-refusals.ts'

/** Inside width : height : depth that a balanced box keeps where the limits let it. */
export const preferredRatio = { width: 1.62, height: 1, depth: 0.62 } as const

const between = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value))
const lastOf: Record<Exclude<Strategy, 'balanced'>, Axis> = {
  lowest: 'height',
  shallowest: 'depth',
  narrowest: 'width'
}

/** A way from the smallest to the largest box on which the volume only grows; s from 0 to 1. */
export function pathOf(strategy: Strategy, ranges: Ranges, thicknessM: number): (s: number) => OuterSizes {
  const { width, height, depth } = ranges
  if (strategy === 'balanced') {
    const longest = Math.max(...axes.map(axis => ranges[axis].max / preferredRatio[axis]))
    const size = (axis: Axis, s: number) =>
      between(2 * thicknessM + preferredRatio[axis] * longest * s, ranges[axis].min, ranges[axis].max)
    return s => ({ width: size('width', s), height: size('height', s), depth: size('depth', s) })
  }
  const last = lastOf[strategy]
  return s => {
    const [early, late] = [between(2 * s, 0, 1), between(2 * s - 1, 0, 1)]
    return {
      width: grown(width, last === 'width' ? late : early),
      height: grown(height, last === 'height' ? late : early),
      depth: grown(depth, last === 'depth' ? late : early)
    }
  }
}

const grown = ({ min, max }: Ranges[Axis], share: number) => min + (max - min) * share
