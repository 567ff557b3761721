/** One box around one enclosure candidate: what it is built of and what goes into it. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Strategy } from '../../../contract/boxes/words.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { layOutBox } from '../../../domain/box/layout/lay-out-box.ts'
import type { BoxPort } from '../../../domain/box/request/box-request.ts'
import { present } from '../../../domain/present.ts'
import { type Part, runPart } from '../../request/part.ts'
import { crossoverHz } from './plan-crossover.ts'
import { shellRequest } from './plan-shell.ts'

export type BoxPart = Part<BoxRequest, BoxLayout>

export interface BoxWish {
  readonly netVolumeM3: number
  readonly port: BoxPort | undefined
  readonly strategy: Strategy | undefined
}

export function planBox(request: PlanRequest, { netVolumeM3, port, strategy }: BoxWish): BoxPart {
  const { strategy: _s, shape: _, ...limits } = request.car.space
  const box = {
    ...shellRequest(request),
    netVolumeM3,
    limits,
    ...present({ strategy, port })
  }
  return runPart(box, layOutBox)
}

/** Net volume of the largest box the space holds, drivers and terminal taken off; undefined where not even the drivers fit. */
export function roomForAir(request: PlanRequest): number | undefined {
  const { widthM, heightM, depthM, coveringM = 0, clearanceM = 0, seatSlopeDeg, shape } = request.car.space
  const inside = (sizeM: number | undefined) => (sizeM === undefined ? undefined : sizeM - 2 * (coveringM + clearanceM))
  const sizes = Object.entries({ widthM: inside(widthM), heightM: inside(heightM), depthM: inside(depthM) })
  const outer = Object.fromEntries(sizes.filter(([, sizeM]) => sizeM !== undefined)) as NonNullable<BoxRequest['outer']>
  const lean = shape === 'wedge' && seatSlopeDeg !== undefined ? { slopeDeg: seatSlopeDeg } : {}
  const largest = runPart({ ...shellRequest(request), ...lean, outer }, layOutBox)
  return largest.done && largest.outcome.result.volume.netM3 > 0 ? largest.outcome.result.volume.netM3 : undefined
}

/** The same box with braces until its panels stay out of the band, at the pressure it really sees. */
export function bracedBox(
  request: PlanRequest,
  { request: box }: BoxPart & { readonly done: true },
  pressurePa: number
): BoxPart {
  const upperHz = request.board.bracing?.upperHz ?? crossoverHz(request)
  const bracing = { upperHz, ...(pressurePa > 0 ? { pressurePa } : {}) }
  return runPart({ ...box, bracing }, layOutBox)
}

/** Everything in the box clears everything else. */
export function clears(part: BoxPart): boolean {
  return part.done && part.outcome.result.clearances.every(({ passes }) => passes)
}
