/** What stands in for absent fields of battery, charging and ways back, and what a supply is judged by. */
import type { DefaultTable } from '../../default.ts'

export const supplyDefaults = {
  idleFraction: {
    value: 0.5,
    unit: '1',
    why: 'alternator output at idle 0.4 to 0.6 of its rating, common practice; give idleA when the rating line is known',
    source: 'practice'
  },
  hotFactor: {
    value: 0.85,
    unit: '1',
    why: 'a hot alternator gives about 85 % of its rating, common practice',
    source: 'practice'
  },
  baseLoadA: {
    value: 35,
    unit: 'A',
    why: 'engine, lights and blower draw 20 to 60 A, common practice',
    source: 'practice'
  },
  chemistry: {
    value: 'flooded',
    unit: 'word',
    why: 'battery type not stated: flooded, which lasts shortest',
    source: 'practice'
  },
  ratedHours: { value: 20, unit: 'h', why: 'capacity is printed for 20 h', source: 'practice' },
  usableFraction: {
    value: 0.5,
    unit: '1',
    why: 'a starting battery is not discharged below half, common practice',
    source: 'practice'
  },
  usableLithium: {
    value: 0.8,
    unit: '1',
    why: 'a lithium battery is used to four fifths, common practice; its own management ends it',
    source: 'practice'
  },
  capacitorFromVPer12V: { value: 14.4, unit: 'V', why: 'charged to running voltage', source: 'practice' },
  capacitorToVPer12V: { value: 12, unit: 'V', why: 'let down to nominal voltage', source: 'practice' },
  prechargeOhm: {
    why: 'engineering choice: about 20 W in the resistor at first, as a 21 W lamp takes',
    source: 'ours'
  },
  jointOhm: { value: 0.0002, unit: 'Ω', why: 'a crimped lug or ring 0.2 mΩ, common practice', source: 'practice' },
  chassisOhm: {
    value: 0.002,
    unit: 'Ω',
    why: 'body return 2 mΩ (0.5 to 10): measure it, bonded, aluminium and composite bodies differ',
    source: 'practice'
  },
  dropLimitPercent: {
    value: 3,
    unit: '%',
    why: 'main feeder: 3 % of nominal voltage on the cable, as electronics and feeders are classed',
    source: 'practice'
  },
  totalDropCarePercent: {
    value: 5,
    unit: '%',
    why: 'from here a drop from source to amplifier is too much',
    source: 'practice'
  },
  totalDropStopPercent: { value: 10, unit: '%', why: 'from here an amplifier starves', source: 'practice' },
  groundLeadM: {
    value: 0.5,
    unit: 'm',
    why: 'ground lead of half a metre to bare metal of the body',
    source: 'practice'
  },
  groundTolerance: {
    value: 1.3,
    unit: '1',
    why: 'a ground reading over its design: length, area, lugs and meter',
    source: 'ours'
  },
  parallelRuns: { value: 4, unit: '1', why: 'more cables side by side are never laid', source: 'ours' },
  nearMissPercent: { value: 10, unit: '%', why: 'a size that lacks no more of its section is told', source: 'ours' },
  collapseMargin: { value: 2, unit: '1', why: 'of the most a source gives over what is drawn', source: 'ours' },
  groundNoiseDb: {
    value: -60,
    unit: 'dB',
    why: 'ripple this loud under the signal is taken as audible',
    source: 'ours'
  }
} as const satisfies DefaultTable
