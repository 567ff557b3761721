import { describe, expect, it } from 'vitest'
import { latestBatteryOff, workDays } from '../../src/plan/steps/work-days.ts'
import { draws } from '../support/random-systems.ts'

const timed = (id: string, minutes: number, needs: readonly string[] = [], cureMinutes = 0) => ({
  id,
  needs,
  minutes,
  cureMinutes
})
const DAY = 480
const CLOCK = 1440

/** Any order of steps, each needing some before it. */
function randomSteps(seed: number) {
  const draw = draws(seed)
  return Array.from({ length: draw.whole(1, 25) }, (_, index) => {
    const needs = Array.from({ length: index }, (_, before) => `s${before}`).filter(() => draw.whole(0, 5) === 0)
    return timed(`s${index}`, draw.whole(1, 20) * 15, needs, draw.pick([0, 0, 45, 120, CLOCK]))
  })
}

describe('work over days', () => {
  // Hand calculation: the second step is ready 660 min after the start, beyond the 480 of the day.
  it('goes on with other work while something cures', () => {
    const days = workDays([timed('glue', 60, [], 600), timed('sand', 60, ['glue']), timed('cable', 300)])
    expect(days).toEqual([
      { day: 1, steps: ['glue', 'cable'], minutes: 360 },
      { day: 2, steps: ['sand'], minutes: 60 }
    ])
  })

  // Hand calculation: dry 2880 min after 60 of work, an hour into the third day.
  it('waits within a day where that is enough, and leaves out a day on which only paint dries', () => {
    expect(workDays([timed('glue', 60, [], 45), timed('screw', 60, ['glue'])]).map(({ day }) => day)).toEqual([1])
    const paint = workDays([timed('paint', 60, [], 2 * CLOCK), timed('polish', 60, ['paint'])])
    expect(paint.map(({ day }) => day)).toEqual([1, 3])
  })

  it('takes a step longer than a day by itself', () => {
    expect(workDays([timed('long', 700), timed('short', 10)]).map(({ steps }) => steps)).toEqual([['long'], ['short']])
  })

  it('does every step once, none before what it needs has cured, none beyond the evening', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const steps = randomSteps(seed)
      const days = workDays(steps)
      expect(days.flatMap(day => day.steps).toSorted()).toEqual(steps.map(({ id }) => id).toSorted())
      const dayOf = new Map(days.flatMap(({ day, steps: ids }) => ids.map((id, at) => [id, { day, at }] as const)))
      for (const { minutes } of days) expect(minutes).toBeLessThanOrEqual(DAY)
      for (const { id, needs } of steps)
        for (const need of needs) {
          const [own, before] = [dayOf.get(id), dayOf.get(need)]
          const cure = steps.find(step => step.id === need)?.cureMinutes ?? 0
          expect(own?.day).toBeGreaterThanOrEqual((before?.day ?? 0) + (cure >= CLOCK ? 1 : 0))
          if (own?.day === before?.day) expect(own?.at).toBeGreaterThan(before?.at ?? 99)
        }
    }
  })

  it('leaves the battery on as long as the number of days allows', () => {
    const steps = [
      timed('glue', 60, [], CLOCK),
      timed('sand', 60, ['glue'], CLOCK),
      timed('battery-off', 15),
      timed('cable', 60, ['battery-off']),
      timed('mount', 60, ['sand', 'cable'])
    ]
    expect(workDays(steps)[0]?.steps).toContain('battery-off')
    const days = latestBatteryOff(steps)
    expect(days.at(-1)?.day).toBe(workDays(steps).at(-1)?.day)
    expect(days.findIndex(({ steps: ids }) => ids.includes('battery-off'))).toBeGreaterThan(0)
  })
})
