/** Judgement values of a system at work; a response notes each that it used. */
import type { DefaultTable } from '../../default.ts'
import { portSpeeds } from '../../port/air-speed.ts'

export const limitDefaults = {
  airSpeedMPerS: {
    value: portSpeeds.sharp,
    unit: 'm/s',
    why: 'common practice: 5 % of the speed of sound, for straight ports with sharp ends',
    source: 'practice-port-speed'
  },
  dutyFactor: {
    value: 1,
    unit: '1',
    why: 'a continuous full sine, the worst case; music heats with 0.13 to 0.2 of that (common practice)',
    source: 'practice'
  },
  portLossFactor: {
    value: 1.5,
    unit: '1',
    why: 'sharp ends, 0.5 for the way in and 1.0 for the way out: an upper estimate',
    source: 'practice'
  },
  thermalReading: {
    value: 'lower',
    unit: 'word',
    why: 'a rating does not say how it was measured; the lower reading is safe',
    source: 'ours'
  },
  ratedOhm: {
    why: 'the DC resistance of the drivers as they are joined, a little below the rated impedance: safe',
    source: 'derived'
  },
  statedOhm: { why: 'the load at which the power of source or amplifier is stated', source: 'derived' },
  coilRiseK: {
    value: 180,
    unit: 'K',
    why: 'engineering choice: a rise of 180 K at the rated power',
    source: 'ours'
  },
  ambientC: { value: 25, unit: '°C', why: 'a mild car; parked in the sun it is 50 °C and more', source: 'ours' },
  maximumCoilC: {
    value: 200,
    unit: '°C',
    why: 'engineering choice: what common coil adhesives stand',
    source: 'ours'
  },
  metal: { value: 'copper', unit: 'word', why: 'most coils are wound of copper', source: 'practice' },
  programmeFromHz: { value: 15, unit: 'Hz', why: 'music seldom reaches lower', source: 'practice' },
  programmeToHz: { value: 200, unit: 'Hz', why: 'the range of a bass system', source: 'practice' }
} as const satisfies DefaultTable
