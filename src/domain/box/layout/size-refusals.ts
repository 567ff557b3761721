/** Why no box of the volume asked for lies between the smallest and the largest. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { DesignError } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { listed, say } from '../../say.ts'
import { type Axis, axes } from '../boot/axes.ts'
import { freeAxes, type Ranges } from '../boot/size-limits.ts'

export type OuterSizes = Readonly<Record<Axis, number>>

export interface SizedBox {
  readonly sizes: OuterSizes
  readonly netM3: number
}

/** A box of the volume asked for, or why there is none, worded when it is told: most tries are not. */
export type Solved =
  | { readonly box: SizedBox; readonly refusal?: undefined }
  | { readonly box?: undefined; readonly refusal: () => DesignError }

const sizesText = ({ width, height, depth }: OuterSizes) =>
  [width, height, depth].map(m => Math.round(m * 1e3)).join(' × ')

export function tooLarge(target: number, most: SizedBox, request: BoxRequest): DesignError {
  const bound = axes.filter(axis => request.limits?.[`${axis}M`] !== undefined).map(axis => say(`axis.${axis}`))
  return new DesignError('no-solution', {
    field: 'netVolumeM3',
    value: target,
    maximum: Math.max(0, most.netM3),
    unit: 'm3',
    detail: say('refused.do-not-fit-the-largest-box', {
      targetL: toDigits(target * 1e3, 4),
      sizes: sizesText(most.sizes),
      netL: toDigits(Math.max(0, most.netM3) * 1e3, 4),
      lessL: toDigits((target - Math.max(0, most.netM3)) * 1e3, 4),
      inTheWay: bound.length === 0 ? say('refused.longest-board') : listed(bound)
    })
  })
}

/** Boards, drivers, port and a hand inside make the least box hold more than was asked for. */
export function tooSmall(target: number, least: SizedBox, ranges: Ranges): DesignError {
  const free = freeAxes(ranges).map(axis =>
    say('refused.least-axis', { axis: say(`axis.${axis}`), leastMm: Math.ceil(ranges[axis].min * 1e3 - 1e-6) })
  )
  return new DesignError('no-solution', {
    field: 'netVolumeM3',
    value: target,
    minimum: least.netM3,
    unit: 'm3',
    detail: say('refused.is-too-little-for-this-box', {
      targetL: toDigits(target * 1e3, 4),
      sizes: sizesText(least.sizes),
      netL: toDigits(least.netM3 * 1e3, 4),
      moreL: toDigits((least.netM3 - target) * 1e3, 4),
      inTheWay: free.length === 0 ? say('refused.sizes-given') : listed(free)
    })
  })
}

/** Sizes that were given, not sought: what stands in the box may fill it. @throws DesignError `no-solution` */
export function leaveAir(grossM3: number, netM3: readonly number[]): void {
  if (netM3.every(air => air > 0)) return
  const overL = toDigits(-Math.min(...netM3) * 1e3, 4)
  throw new DesignError('no-solution', {
    field: 'outer',
    detail: say('refused.no-air-is-left-what-stands', { grossL: toDigits(grossM3 * 1e3, 4), overL })
  })
}
