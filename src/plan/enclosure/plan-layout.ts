/** One box around one volume and port: a hair smaller where only that is missing, and in other proportions where it is tight. */
import { strategies } from '../../contract/boxes/words.ts'
import type { BoxBrief } from '../request/box-brief.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import { type BoxWish, clears, planBox, type TriedBoxPart, wholeVolumeM3 } from './parts/plan-box.ts'
import { missOf } from './plan-miss.ts'

/** The largest volume allowed, where it lacks little of the one wanted. */
function sparedVolume(part: TriedBoxPart, netVolumeM3: number): number | undefined {
  const fault = part.done ? undefined : part.refusal.faults.find(({ field }) => field === 'netVolumeM3')
  const most = fault?.maximum
  const { sparedShare, underLargest } = enclosurePlanDefaults
  return most !== undefined && most >= netVolumeM3 * (1 - sparedShare.value) ? most * underLargest.value : undefined
}

/** Grown as the caller wants, else balanced. */
export function laidOut(brief: BoxBrief, wish: Omit<BoxWish, 'strategy'>): TriedBoxPart {
  const { strategy } = brief.space
  const first = planBox(brief, { ...wish, strategy })
  const whole = wholeVolumeM3(wish)
  const spared = sparedVolume(first, whole)
  if (spared === undefined) return first
  const smaller = planBox(brief, { ...wish, strategy, netVolumeM3: wish.netVolumeM3 - (whole - spared) })
  return smaller.done ? smaller : first
}

const otherWays = strategies.filter(strategy => strategy !== 'balanced')

/** @returns the first other way of growing in which everything clears, else the one that comes nearest to it; none where the caller wants one */
export function regrown(brief: BoxBrief, wish: Omit<BoxWish, 'strategy'>): TriedBoxPart | undefined {
  if (brief.space.strategy !== undefined) return undefined
  let nearest: TriedBoxPart | undefined
  for (const strategy of otherWays) {
    const next = planBox(brief, { ...wish, strategy })
    if (nearest === undefined || missOf({ box: next }) < missOf({ box: nearest })) nearest = next
    if (clears(nearest)) return nearest
  }
  return nearest
}
