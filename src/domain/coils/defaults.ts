/** Judgement values of coils and their cable; those that stand in for an absent field are noted as assumed. */
import type { DefaultTable } from '../default.ts'

export const coilDefaults = {
  targetOhm: {
    why: 'Neither a target nor a minimum load was given: a load like that of one coil suits most amplifiers.',
    source: 'practice'
  },
  cableSizes: {
    value: ['16 AWG', '14 AWG', '12 AWG', '10 AWG', '8 AWG'],
    unit: 'word',
    why: 'sizes that are sold as loudspeaker cable',
    source: 'practice'
  },
  cableResistancePercent: {
    value: 5,
    unit: '%',
    why: 'cable resistance up to 5 % of the load costs at most 0.42 dB, common practice',
    source: 'speaker-cable-practice'
  },
  cableAmbientC: {
    value: 30,
    unit: '°C',
    why: 'full-sine current at the 30 °C of the ampacity table: even dense music averages below 58 % of it, which pays for a hot cabin',
    source: 'ours'
  }
} as const satisfies DefaultTable
