/** Rules of the workshop and of the first start. */
import type { DefaultTable } from '../../domain/default.ts'

export const workDefaults = {
  stepMinutes: {
    why: 'minutes and curing times of the steps stand beside their tools: a careful first build',
    source: 'practice'
  },
  practised: {
    value: 0.45,
    unit: '1',
    why: 'a practised hand takes 0.4 to 0.5 of the time of a first build',
    source: 'practice'
  },
  armOpeningM: { value: 0.12, unit: 'm', why: 'the smallest hole an arm passes', source: 'practice' },
  armReachM: { value: 0.45, unit: 'm', why: 'what an arm reaches through it', source: 'practice' },
  twoHandsKg: {
    value: 10,
    unit: 'kg',
    why: 'a driver that is heavier is lowered with two hands or two people',
    source: 'practice'
  },
  parkedA: {
    value: 0.02,
    unit: 'A',
    why: 'what a parked car may give to the whole system: a month or two of a sound battery',
    source: 'practice'
  },
  crashFactor: {
    value: 20,
    unit: '1',
    why: 'seat regulation: 20 × mass × 9.8 N',
    source: 'seat-inertia-49-cfr-571-207'
  },
  crashGravityMPerS2: {
    value: 9.8,
    unit: 'm/s²',
    why: 'seat regulation: 20 × mass × 9.8 N',
    source: 'seat-inertia-49-cfr-571-207'
  },
  drivingShares: {
    value: [
      { vehicleUpToKg: 2000, forward: 0.9, rearward: 0.5, sideways: 0.7 },
      { vehicleUpToKg: 3500, forward: 0.8, rearward: 0.5, sideways: 0.6 }
    ],
    unit: '1',
    why: 'share of the weight to hold while driving, by mass of the vehicle',
    source: 'load-securing-esv-09-0008'
  },
  leastStraps: { value: 2, unit: '1', why: 'one strap holds nothing against a turn', source: 'practice' },
  strapCapacityN: {
    value: 5000,
    unit: 'N',
    why: 'lashing capacity of one small strap, 500 daN: common practice; read its label',
    source: 'practice'
  },
  eyeStrengthN: {
    value: 3500,
    unit: 'N',
    why: 'lashing eye of a passenger car, DIN 75410-2 (from memory); read the figure in the handbook',
    source: 'lashing-eyes-din-75410-2'
  },
  strapSlopeDeg: {
    value: 45,
    unit: '°',
    why: 'engineering choice: eyes in a boot floor, straps over the box',
    source: 'ours'
  },
  strapSpreadDeg: {
    value: 45,
    unit: '°',
    why: 'engineering choice: eyes in the corners of a boot, aside from the direction of travel',
    source: 'ours'
  }
} as const satisfies DefaultTable
