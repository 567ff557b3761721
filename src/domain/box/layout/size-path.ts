/** A way from the smallest to the largest box, along which sizing looks for its volume. */
import type { Strategy } from '../../../contract/boxes/words.ts'
import { type Axis, axes, type Ranges } from '../boot/size-limits.ts'
import type { Three } from './size-refusals.ts'

/** Inside width : height : depth that a balanced box keeps where the limits let it. */
export const preferredRatio = { width: 1.62, height: 1, depth: 0.62 } as const

const between = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value))
const lastOf: Record<Exclude<Strategy, 'balanced'>, Axis> = {
  lowest: 'height',
  shallowest: 'depth',
  narrowest: 'width'
}

/** A way from the smallest to the largest box on which the volume only grows; s from 0 to 1. */
export function pathOf(strategy: Strategy, ranges: Ranges, thicknessM: number): (s: number) => Three {
  const three = (size: (axis: Axis) => number): Three => ({
    width: size('width'),
    height: size('height'),
    depth: size('depth')
  })
  if (strategy === 'balanced') {
    const longest = Math.max(...axes.map(axis => ranges[axis].max / preferredRatio[axis]))
    return s =>
      three(axis => between(2 * thicknessM + preferredRatio[axis] * longest * s, ranges[axis].min, ranges[axis].max))
  }
  const last = lastOf[strategy]
  return s =>
    three(axis => {
      const { min, max } = ranges[axis]
      return min + (max - min) * between(axis === last ? 2 * s - 1 : 2 * s, 0, 1)
    })
}
