/** Minutes and curing times of the steps, and the sums a maker plans weekends by. */
import { describe, expect, it } from 'vitest'
import { workNodes } from '../../src/plan/steps/work-nodes.ts'
import { workOrder } from '../../src/plan/steps/work-order.ts'
import { startWork } from '../../src/plan/work/first-start-work.ts'
import { randomBox, randomVehicle } from '../support/random-work.ts'
import { workTimes } from '../support/work-times.ts'

const samples = Array.from({ length: 25 }, (_, index) => {
  const [box, vehicle] = [randomBox(8100 + index), randomVehicle(8100 + index)]
  const nodes = workNodes(box, vehicle)
  return { box, nodes, order: workOrder(nodes, box), times: workTimes(box, vehicle) }
})

describe('the minutes of a step', () => {
  it('are those that were judged, and so are those it cures', () => {
    const seen = new Set<string>()
    for (const { nodes, times } of samples)
      for (const { id, minutes, cureMinutes } of nodes) {
        seen.add(id)
        expect([id, minutes, cureMinutes]).toEqual([id, times[id]?.work, times[id]?.cure ?? 0])
      }
    expect([...seen].toSorted()).toEqual(Object.keys(samples[0]?.times ?? {}).toSorted())
  })

  it('sum to those of the plan and of its days; a practised hand takes 0.45 of them (common practice, no source)', () => {
    for (const { nodes, order, times } of samples) {
      const sum = nodes.reduce((total, { id }) => total + (times[id]?.work ?? 0), 0)
      expect(order.workMinutes).toBe(sum)
      expect(order.practisedMinutes).toBeCloseTo(0.45 * sum, 9)
      expect(order.days.reduce((total, { minutes }) => total + minutes, 0)).toBe(sum)
      // Eight hours a day, and nobody needs fewer days for having done it more slowly.
      expect(order.days.length).toBeGreaterThanOrEqual(Math.ceil(sum / 480))
      expect(order.practisedDays).toBeLessThanOrEqual(order.days.at(-1)?.day ?? 0)
    }
  })

  it('leave no step out when the ways of working are laid beside each other', () => {
    for (const { box, nodes, order, times } of samples) {
      const own = order.ways.find(({ taken }) => taken)
      const ofTheBox = nodes.filter(
        ({ id, place }) => place === 'bench' && id !== 'check-parts' && id !== 'set-up-bench'
      )
      const inCar = nodes.filter(({ id }) => id === 'load-box' || id === 'mount')
      const bench = new Set([...ofTheBox, ...inCar].map(({ id }) => id))
      expect(own?.way).toBe(box.way)
      expect(own?.workMinutes).toBe([...bench].reduce((sum, id) => sum + (times[id]?.work ?? 0), 0))
    }
  })
})

/** Common practice, no source: what each step of the first start takes, by its stretch of the work. */
const startTimes = {
  power: {
    'cable-seen': 15,
    'no-short': 5,
    'speaker-level-lead': 10,
    'trim-back': 45,
    'battery-on': 10,
    precharge: 10,
    'fuse-last': 5,
    'relay-check': 10,
    'charger-check': 15,
    'converter-check': 10,
    running: 10
  },
  gain: {
    'start-safe': 5,
    'speaker-resistance': 5,
    'cone-polarity': 5,
    'turn-on': 5,
    'source-level': 10,
    'speakers-off': 5,
    gain: 10,
    'bridge-halves': 5,
    clipping: 10
  },
  sound: { 'speakers-on': 10, filters: 10, 'acoustic-polarity': 10, level: 15 },
  proof: {
    'warm-check': 25,
    'plus-drop': 15,
    'ground-drop': 10,
    noise: 10,
    'parked-current': 10,
    held: 10,
    'to-owner': 15,
    'first-drive': 20,
    discharge: 5
  }
}

describe('the first start', () => {
  it('takes the minutes that were judged, each in its stretch', () => {
    const judged = Object.entries(startTimes).flatMap(([stage, steps]) =>
      Object.entries(steps).map(([id, minutes]) => [id, { stage, minutes }])
    )
    const taken = Object.entries(startWork).map(([id, { stage, minutes }]) => [id, { stage, minutes }])
    expect(Object.fromEntries(taken)).toEqual(Object.fromEntries(judged))
  })
})
