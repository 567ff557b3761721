import { portSpeeds } from '../../port/air-speed.ts'
import type { CoilMetal } from './coil-heating.ts'

/** Coil to magnet to air; without it the rise at rated power is assumed. */
export interface HeatingRequest {
  readonly coilKPerW?: number
  readonly coilTimeConstantS?: number
  readonly magnetKPerW?: number
  readonly magnetTimeConstantS?: number
  readonly ambientC?: number
  readonly maximumCoilC?: number
  readonly metal?: CoilMetal
}

/** Judgement values; a response echoes each that it used. */
export const limitDefaults = {
  airSpeedMPerS: {
    value: portSpeeds.sharp,
    why: 'common practice: 5 % of the speed of sound, for straight ports with sharp ends'
  },
  dutyFactor: {
    value: 1,
    why: 'a continuous full sine, the worst case; music heats with 0.13 to 0.2 of that (common practice)'
  },
  portLossFactor: { value: 1.5, why: 'sharp ends, 0.5 for the way in and 1.0 for the way out: an upper estimate' },
  thermalReading: { value: 'lower', why: 'a rating does not say how it was measured; the lower reading is safe' },
  ratedOhm: 'the DC resistance of the drivers as they are joined, a little below the rated impedance: safe',
  statedOhm: 'the load at which the power of source or amplifier is stated',
  coilRiseK: { value: 180, why: 'engineering choice: a rise of 180 K at the rated power' },
  ambientC: { value: 25, why: 'a mild car; parked in the sun it is 50 °C and more' },
  maximumCoilC: { value: 200, why: 'engineering choice: what common coil adhesives stand' },
  metal: { value: 'copper', why: 'most coils are wound of copper' },
  programmeFromHz: { value: 15, why: 'music seldom reaches lower' },
  programmeToHz: { value: 200, why: 'the range of a bass system' }
} as const
