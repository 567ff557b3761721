/** What stands in for absent fields of a cable, and what this service judges one by. */
import type { DefaultTable } from '../../default.ts'

export const cableDefaults = {
  strandingFactor: {
    value: 1.02,
    unit: '1',
    why: 'stranded conductor, 2 % above the solid one (agrees with NFPA 70 Ch. 9 Table 8)',
    source: 'practice'
  },
  insulationC: {
    value: 80,
    unit: '°C',
    why: 'insulation not stated: common vehicle PVC, 80 °C; use a higher class only if it is printed on the cable',
    source: 'practice'
  },
  insulationMaterial: {
    value: 'pvc',
    unit: 'word',
    why: 'material of the insulation not stated: PVC, which stands 160 °C once whatever its class; cross-linked polyethylene stands 250 °C',
    source: 'practice'
  },
  ambientEngineBayC: {
    value: 70,
    unit: '°C',
    why: 'a run from the battery usually crosses the engine bay: 70 °C; its hottest stretch decides',
    source: 'practice'
  },
  ambientCabinC: { value: 50, unit: '°C', why: 'closed cabin or boot in summer: 50 °C', source: 'practice' },
  bundledConductors: { value: 1, unit: '1', why: 'no other power conductor in the same loom', source: 'practice' },
  dropTemperatureC: {
    value: 20,
    unit: '°C',
    why: 'drop is judged at 20 °C as cable tables print it; the hot drop is given beside it',
    source: 'practice'
  },
  conductor: {
    value: 'copper',
    unit: 'word',
    why: 'full copper as in the ampacity table; say "unknown" when no copper standard is printed on the cable',
    source: 'practice'
  },
  gaugeSystem: { value: 'awg', unit: 'word', why: 'series not stated: AWG', source: 'practice' },
  sourceVoltageV: { why: 'sized at nominal voltage, where a regulated amplifier draws most', source: 'practice' },
  faultStartC: { why: 'conductor at the class of its insulation before the fault', source: 'practice' },
  sizes: { why: 'sizes on sale everywhere; others when listed', source: 'practice' },
  awgSizes: {
    value: ['16', '14', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0'],
    unit: 'word',
    why: 'sizes on sale everywhere; odd gauges and 3/0 are rare',
    source: 'practice'
  },
  saeSizes: {
    value: ['16', '14', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0'],
    unit: 'word',
    why: 'sizes on sale everywhere; odd gauges and 3/0 are rare',
    source: 'practice'
  },
  metricSizes: {
    value: ['1.5', '2.5', '4', '6', '10', '16', '25', '35', '50', '70', '95'],
    unit: 'word',
    why: 'sizes on sale everywhere',
    source: 'practice'
  },
  metricAluminiumSizes: {
    value: ['10', '16', '25', '35', '50', '70', '95'],
    unit: 'word',
    why: 'aluminium is drawn from 10 mm² up',
    source: 'practice'
  },
  fillFactor: {
    value: 0.75,
    unit: '1',
    why: 'strands fill three quarters of the circle around them',
    source: 'practice'
  },
  emissivity: { value: 0.9, unit: '1', why: 'surface of black or coloured plastic', source: 'practice' }
} as const satisfies DefaultTable
