/** What stands in for absent fields of a circuit, and what its states are judged by. */
import type { DefaultTable } from '../../default.ts'

export const circuitDefaults = {
  chargingOhmPer12V: {
    value: 0.2,
    unit: 'Ω',
    why: 'a nearly full battery takes charge through about 0.2 Ω per 12 V',
    source: 'practice'
  },
  slopeOhm: {
    value: 0.002,
    unit: 'Ω',
    why: 'the regulator lets its voltage fall by 2 mV per ampere',
    source: 'practice'
  },
  joints: { value: 2, unit: '1', why: 'a lug at each end', source: 'practice' },
  jointOhm: { value: 0.0002, unit: 'Ω', why: 'a good lug or contact, 0.2 mΩ', source: 'practice' },
  converterOhm: {
    value: 0.002,
    unit: 'Ω',
    why: 'a converter lets its voltage fall by 2 mV per ampere',
    source: 'practice'
  },
  converterLowestShare: {
    value: 0.75,
    unit: '1',
    why: 'a converter stops below three quarters of the nominal input: 18 V of 24 V in the data sheets seen',
    source: 'practice'
  },
  converterOverload: {
    value: 1.5,
    unit: '1',
    why: 'what a converter gives into a fault, over its rating: 1.1 to 1.5 in the data sheets seen',
    source: 'practice'
  },
  conductorTemperatureC: { value: 20, unit: '°C', why: 'cables at 20 °C', source: 'practice' },
  warmC: { value: 60, unit: '°C', why: 'PVC at work, for the smallest fault', source: 'practice' },
  fuseOverload: { value: 1.1, unit: '1', why: 'of its rating a fuse-link carries for hours', source: 'practice' },
  weakBelowRestV: {
    value: 0.4,
    unit: 'V',
    why: 'a discharged battery below its rest voltage, for each 12 V',
    source: 'ours'
  }
} as const satisfies DefaultTable
