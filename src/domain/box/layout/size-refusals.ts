/** Why no box of the volume asked for lies between the smallest and the largest. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { DesignError } from '../../design-error.ts'
import { inLitres } from '../../digits.ts'
import { type Axis, axes, freeAxes, type Ranges } from '../boot/size-limits.ts'

export type Three = Readonly<Record<Axis, number>>

export interface Candidate {
  readonly three: Three
  readonly netM3: number
}

const threeText = ({ width, height, depth }: Three) => [width, height, depth].map(m => Math.round(m * 1e3)).join(' × ')

export function tooLarge(target: number, most: Candidate, request: BoxRequest): DesignError {
  const bound = axes.filter(axis => request.limits?.[`${axis}M`] !== undefined).join(', ')
  return new DesignError('no-solution', {
    field: 'netVolumeM3',
    value: target,
    maximum: Math.max(0, most.netM3),
    unit: 'm3',
    detail: `${inLitres(target, 4)} do not fit: the largest box allowed, ${threeText(most.three)} mm, holds ${inLitres(Math.max(0, most.netM3), 4)} net, ${inLitres(target - Math.max(0, most.netM3), 4)} too little. In the way: ${bound || 'the longest board'}. Ask for that volume, another alignment or a thinner board.`
  })
}

/** Boards, drivers, port and a hand inside make the least box hold more than was asked for. */
export function tooSmall(target: number, least: Candidate, ranges: Ranges): DesignError {
  const free = freeAxes(ranges).map(axis => `${axis} of at least ${Math.ceil(ranges[axis].min * 1e3 - 1e-6)} mm`)
  return new DesignError('no-solution', {
    field: 'netVolumeM3',
    value: target,
    minimum: least.netM3,
    unit: 'm3',
    detail: `${inLitres(target, 4)} is too little for this box: the smallest that takes its boards, drivers and port, ${threeText(least.three)} mm, holds ${inLitres(least.netM3, 4)} net, ${inLitres(least.netM3 - target, 4)} too much. In the way: ${free.join(', ') || 'the sizes given'}. Ask for that volume, give smaller sizes, or a smaller driver.`
  })
}

/** Sizes that were given, not sought: what stands in the box may fill it. @throws DesignError `no-solution` */
export function leaveAir(grossM3: number, netM3: readonly number[]): void {
  if (netM3.every(air => air > 0)) return
  const over = inLitres(-Math.min(...netM3), 4)
  throw new DesignError('no-solution', {
    field: 'outer',
    detail: `No air is left: what stands in the ${inLitres(grossM3, 4)} inside takes all of it and ${over} more.`
  })
}
