/** What each wish means in figures; in words it stands in the contract. All figures are engineering choices of ours, tuned on a prototype's designs for ten invented drivers. */
import type { DesignGoal } from '../../../contract/systems/words.ts'

export interface Goal {
  /** Band over which the level held is averaged, each twelfth of an octave alike. */
  readonly fromHz: number
  readonly toHz: number
  /** What a doubling of the space the box takes must bring [dB]. */
  readonly doublingDb: number
  /** Group delay that costs nothing [s], and what each second beyond it costs [dB/s]. */
  readonly delayFreeS: number
  readonly delayDbPerS: number
  /** What a decibel of unevenness costs. */
  readonly unevennessWeight: number
  /** The protective high-pass never lies above: below it power is given up before bass. */
  readonly highestCornerHz: number
  readonly highestQtc: number
  /** Only closed boxes. */
  readonly closedOnly?: true
  /** The least box within this of the loudest system, instead of the loudest. */
  readonly withinDb?: number
}

const free = { delayFreeS: 0, delayDbPerS: 0, unevennessWeight: 0 } as const

export const goals: Readonly<Record<DesignGoal, Goal>> = {
  everyday: {
    // a doubling of the room must bring 1.8 dB, ringing beyond 18 ms and bumps cost a little; the cone is not held by a filter above 30 Hz
    fromHz: 25,
    toHz: 63,
    doublingDb: 1.8,
    delayFreeS: 0.018,
    delayDbPerS: 100,
    unevennessWeight: 0.3,
    highestCornerHz: 30,
    highestQtc: 1
  },
  low: {
    // a filter above 20 Hz would take what is asked for; room still counts, or no box would be large enough
    fromHz: 20,
    toHz: 31.5,
    doublingDb: 1.8,
    ...free,
    highestCornerHz: 20,
    highestQtc: 1.1
  },
  loud: {
    // a filter up to 35 Hz lets the cone take all the power where music is loudest
    fromHz: 25,
    toHz: 63,
    doublingDb: 1.5,
    ...free,
    highestCornerHz: 35,
    highestQtc: 1.2
  },
  tight: {
    // each millisecond of ringing beyond 10 costs a decibel; Qtc stays near 0.8 or what the driver itself allows
    fromHz: 25,
    toHz: 80,
    doublingDb: 1.5,
    delayFreeS: 0.01,
    delayDbPerS: 1000,
    unevennessWeight: 0.2,
    highestCornerHz: 20,
    highestQtc: 0.8,
    closedOnly: true
  },
  small: {
    // 6 dB are a quarter of the power: heard, and still the same music; a filter up to 40 Hz saves the cone in a small box
    fromHz: 31.5,
    toHz: 63,
    doublingDb: 6,
    ...free,
    highestCornerHz: 40,
    highestQtc: 1.2,
    withinDb: 6
  }
}

/** A free cone of this Qts or more rings in a vented box: unevenness counts in full. Ours. */
const LOOSE_QTS = 0.55
/** What a small closed box may add to the damping of a loose driver before it booms. Ours. */
const TIGHT_RISE = 1.45

/** The goal as it stands for drivers of this Qts. */
export function goalFor(goal: Goal, qts: number): Goal {
  if (goal.closedOnly) return { ...goal, highestQtc: Math.max(goal.highestQtc, TIGHT_RISE * qts) }
  if (goal.unevennessWeight > 0 && qts > LOOSE_QTS) return { ...goal, unevennessWeight: 1 }
  return goal
}
