/** What stands in for absent fields of amplifiers and of a converter between two voltages. */
import type { DefaultTable } from '../../default.ts'

export const loadDefaults = {
  switchingFrom: {
    value: 0.72,
    unit: '1',
    why: 'no class B output stage behind a converter gets this far, so an unnamed class above it is taken as D',
    source: 'ours'
  },
  switching: {
    why: 'partial-load law from the efficiency: only a switching stage gets this far',
    source: 'ours'
  },
  notSwitching: {
    why: 'partial-load law from the efficiency: a class AB stage, which draws more at part load',
    source: 'ours'
  },
  quiescentShare: {
    value: 0.2,
    unit: '1',
    why: 'idle draw is never taken above a fifth of the full draw',
    source: 'ours'
  },
  averageDuty: { value: 1 / 8, unit: '1', why: 'mean power of music, over that of the sine', source: 'practice' },
  heavyDuty: { value: 1 / 3, unit: '1', why: 'the same of dense bass', source: 'practice' },
  standbyLimitA: { value: 0.001, unit: 'A', why: 'more empties a battery in weeks', source: 'practice' },
  ratedVoltageVPer12V: {
    value: 14.4,
    unit: 'V',
    why: 'rating supply of ANSI/CTA-2006, 14.4 V per 12 V',
    source: 'practice'
  },
  chargingVPer12V: {
    value: 14.4,
    unit: 'V',
    why: 'usual charging voltage with the engine running',
    source: 'practice'
  },
  parkedLoadA: {
    value: 3,
    unit: 'A',
    why: 'music source, displays and door electronics of a parked car: 3 A, our choice; measure it',
    source: 'ours'
  },
  dropOutV: {
    value: 10.5,
    unit: 'V',
    why: 'a 12 V amplifier’s converter stops near 10.5 V when its sheet says nothing',
    source: 'practice'
  }
} as const satisfies DefaultTable

/** A converter for amplifiers of 12 V, where its sheet is not at hand. */
export const converterDefaults = {
  outputV: {
    value: 13.6,
    unit: 'V',
    why: 'volts that a converter for 12 V units holds: 13.2 to 13.8 are usual',
    source: 'practice'
  },
  efficiency: {
    value: 0.88,
    unit: '1',
    why: 'output over input of a converter: data sheets say 0.82 to 0.92',
    source: 'practice'
  },
  idleW: { value: 4, unit: 'W', why: 'a converter takes about 4 W with nothing at its output', source: 'practice' },
  ratedA: { why: 'amperes of the next rating that is sold above the full sine', source: 'ours' },
  ratingsA: {
    value: [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100],
    unit: 'A',
    why: 'outputs that are sold',
    source: 'practice'
  }
} as const satisfies DefaultTable
