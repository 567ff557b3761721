/** The work laid over days: what can go on while something dries goes on, and the car is without its battery as briefly as that allows. */

import type { WorkDay } from '../../contract/systems/workshop.ts'
import type { BuildStep } from '../work/build-step.ts'
import { dayDefaults } from './defaults.ts'

type Timed = Pick<BuildStep, 'id' | 'needs' | 'minutes' | 'cureMinutes'>

const ROUND_THE_CLOCK = 24 * 60
const BATTERY_OFF = 'battery-off'

/** How long it takes from the start of a step to the end of all that hangs on it [min]. */
function chainsOf(steps: readonly Timed[]): ReadonlyMap<string, number> {
  const chains = new Map<string, number>()
  for (const { id, minutes, cureMinutes } of steps.toReversed()) {
    const later = steps.filter(({ needs }) => needs.includes(id)).map(next => chains.get(next.id) ?? 0)
    chains.set(id, minutes + cureMinutes + Math.max(0, ...later))
  }
  return chains
}

interface Clock {
  readonly day: number
  /** Worked of that day [min]. */
  readonly spent: number
}

const nowOf = ({ day, spent }: Clock) => (day - 1) * ROUND_THE_CLOCK + spent

/** The next moment at which something is ready, or the next morning. */
function later(clock: Clock, readyAt: readonly number[]): Clock {
  const now = nowOf(clock)
  const next = Math.min(...readyAt.filter(at => at > now))
  const spent = next - (clock.day - 1) * ROUND_THE_CLOCK
  return spent < dayDefaults.dayMinutes.value ? { day: clock.day, spent } : { day: clock.day + 1, spent: 0 }
}

/**
 * One pair of hands takes, of what is ready and ends before the evening, the step with the longest chain behind it.
 *
 * @param steps  in an order in which none comes before what it needs
 * @param batteryDay  first day on which the battery may go off
 * @source R. L. Graham, "Bounds on multiprocessing timing anomalies", SIAM J. Appl. Math. 17 (1969) (from memory): list scheduling
 * @check  60 min that cure for 600, then 60 min, and 300 min apart from both: the first day 60 and 300, the second 60
 */
export function workDays(steps: readonly Timed[], batteryDay = 1): readonly WorkDay[] {
  const chains = chainsOf(steps)
  const readyAt = new Map<string, number>()
  const days = new Map<number, Timed[]>()
  const open = new Set(steps)
  const startOf = ({ id, needs }: Timed) =>
    Math.max(
      id === BATTERY_OFF ? (batteryDay - 1) * ROUND_THE_CLOCK : 0,
      ...needs.map(need => readyAt.get(need) ?? Number.POSITIVE_INFINITY)
    )
  let clock: Clock = { day: 1, spent: 0 }
  while (open.size > 0) {
    const { day, spent } = clock
    const fitting = [...open].filter(
      step => startOf(step) <= nowOf(clock) && (spent === 0 || spent + step.minutes <= dayDefaults.dayMinutes.value)
    )
    const next = fitting.toSorted((a, b) => (chains.get(b.id) ?? 0) - (chains.get(a.id) ?? 0))[0]
    if (next === undefined) {
      clock = later(clock, [...open].map(startOf))
      continue
    }
    open.delete(next)
    days.set(day, [...(days.get(day) ?? []), next])
    clock = { day, spent: spent + next.minutes }
    readyAt.set(next.id, nowOf(clock) + next.cureMinutes)
  }
  return [...days].map(([day, done]) => ({
    day,
    steps: done.map(({ id }) => id),
    minutes: done.reduce((sum, { minutes }) => sum + minutes, 0)
  }))
}

export const lastDay = (days: readonly WorkDay[]) => days.at(-1)?.day ?? 0

/** The same number of days, the battery off as late as that allows. */
export function latestBatteryOff(steps: readonly Timed[]): readonly WorkDay[] {
  const best = workDays(steps)
  for (let day = lastDay(best); day > 1; day--) {
    const tried = workDays(steps, day)
    if (lastDay(tried) <= lastDay(best)) return tried
  }
  return best
}
