/** One box around one enclosure candidate: what it is built of and what goes into it. */
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { BoxLayout } from '../../../contract/boxes/box-result.ts'
import type { Strategy } from '../../../contract/boxes/words.ts'
import {
  layOutBox,
  layOutTried,
  type SolvedBox,
  type TriedBox,
  tryBox
} from '../../../domain/box/layout/lay-out-box.ts'
import type { BoxPort } from '../../../domain/box/request/box-request.ts'
import { present } from '../../../domain/present.ts'
import { type BoxBrief, isDivided } from '../../request/box-brief.ts'
import type { Part, RunPart } from '../../request/part.ts'
import { boxPlanDefaults } from './defaults.ts'
import type { RadiatorPlace } from './plan-radiators.ts'
import { isLeft, shellRequest, spaceLimits } from './plan-shell.ts'

export type BoxPart = Part<BoxRequest, BoxLayout>

/** A box of an attempt: only what tells whether it will do. */
export type TriedBoxPart = Part<BoxRequest, SolvedBox>

/** Tried or laid out. */
export type JudgedBoxPart = Part<BoxRequest, TriedBox>

export interface BoxWish {
  readonly netVolumeM3: number
  /** Only of a band-pass: before the drivers. */
  readonly frontVolumeM3?: number
  readonly port: BoxPort | undefined
  readonly radiators?: RadiatorPlace
  readonly strategy: Strategy | undefined
}

/** Of all chambers. */
export const wholeVolumeM3 = ({ netVolumeM3, frontVolumeM3 = 0 }: Omit<BoxWish, 'strategy'>): number =>
  netVolumeM3 + frontVolumeM3

export function planBox(brief: BoxBrief, wish: BoxWish): TriedBoxPart {
  const { frontVolumeM3, port, radiators, strategy } = wish
  const netVolumeM3 = wholeVolumeM3(wish)
  const divider = frontVolumeM3 === undefined ? undefined : { frontNetVolumeM3: frontVolumeM3, screwedFront: true }
  const drawnIn = (furtherM: number) => {
    const shell = shellRequest(brief, furtherM, radiators)
    return brief.run(
      { ...shell, netVolumeM3, limits: spaceLimits(brief, radiators), ...present({ strategy, port, divider }) },
      tryBox
    )
  }
  const whole = drawnIn(0)
  if (!isOverFootprint(brief) || !holdsTooMuch(whole)) return whole
  let [low, high]: [number, number] = [0, boxPlanDefaults.farthestInM.value]
  let nearest = whole
  for (let turn = 0; turn < boxPlanDefaults.mostTurns.value; turn++) {
    const furtherM = (low + high) / 2
    const box = isLeft(brief, furtherM) ? drawnIn(Math.round(furtherM * 1e3) / 1e3) : undefined
    if (box?.done) nearest = box
    if (box !== undefined && holdsTooMuch(box)) low = furtherM
    else high = furtherM
  }
  return nearest
}

const isOverFootprint = ({ space }: BoxBrief) => space.shape === 'prism' || space.shape === 'round'

const holdsTooMuch = (part: TriedBoxPart) =>
  !part.done && part.refusal.faults.some(({ field, minimum }) => field === 'netVolumeM3' && minimum !== undefined)

/** Net volume of the largest box the space holds, drivers and terminal taken off; undefined where not even the drivers fit. Of a band-pass all of its inside. */
export function roomForAir(brief: BoxBrief): number | undefined {
  const { widthM, heightM, depthM, coveringM = 0, clearanceM = 0, seatSlopeDeg, shape } = brief.space
  const inside = (sizeM: number | undefined) => (sizeM === undefined ? undefined : sizeM - 2 * (coveringM + clearanceM))
  const sizes = Object.entries({ widthM: inside(widthM), heightM: inside(heightM), depthM: inside(depthM) })
  const asked = sizes.filter(([size, sizeM]) => sizeM !== undefined && !(isOverFootprint(brief) && size !== 'heightM'))
  const outer = Object.fromEntries(asked) as NonNullable<BoxRequest['outer']>
  const lean = shape === 'wedge' && seatSlopeDeg !== undefined ? { slopeDeg: seatSlopeDeg } : {}
  const { drivers, ...shell } = shellRequest(brief)
  const within = isDivided(brief) ? shell : { ...shell, ...present({ drivers }) }
  const largest = brief.run({ ...within, ...lean, outer }, tryBox)
  return largest.done && largest.outcome.result.volume.netM3 > 0 ? largest.outcome.result.volume.netM3 : undefined
}

/** Air behind the drivers, and before them where they stand between two chambers. */
export function airIn({ outcome }: JudgedBoxPart & { readonly done: true }): {
  readonly netVolumeM3: number
  readonly frontVolumeM3?: number
} {
  const { volume, chambers = [] } = outcome.result
  const of = (name: 'rear' | 'front') => chambers.find(each => each.name === name)?.netM3
  return { netVolumeM3: of('rear') ?? volume.netM3, ...present({ frontVolumeM3: of('front') }) }
}

type TriedWell = TriedBoxPart & { readonly done: true }

/** Laid out as the resource of its own does, from the sizes at hand: braces and the rest of the answer alter nothing of those. */
const fromTried = (run: RunPart, { request, outcome }: TriedWell, bracing: BoxRequest['bracing']): BoxPart =>
  run({ ...request, ...present({ bracing }) }, asked => layOutTried(asked, outcome.result), layOutBox)

/** A box that was only tried, with everything that is told of it. */
export const wholeBox = ({ run }: BoxBrief, part: TriedBoxPart): BoxPart =>
  part.done ? fromTried(run, part, undefined) : part

/** The same box with braces until its panels stay out of the band, at the pressure it really sees. */
export function bracedBox({ board, crossoverHz, run }: BoxBrief, tried: TriedWell, pressurePa: number): BoxPart {
  const upperHz = board.bracing?.upperHz ?? crossoverHz
  const bracing = { upperHz, ...(pressurePa > 0 ? { pressurePa } : {}) }
  return fromTried(run, tried, bracing)
}

/** Everything in the box clears everything else. */
export function clears(part: JudgedBoxPart): boolean {
  return part.done && part.outcome.result.clearances.every(({ passes }) => passes)
}
