/** Judgement values of the driver room; those that stand in for an absent field are noted as assumed. */
import type { DefaultTable } from '../../default.ts'

export const driverDefaults = {
  usualQms: {
    value: 5,
    unit: '1',
    why: 'only Qts is given; Qes follows, and moves by less than 10 % for Qms from 2.5 upwards',
    source: 'ours'
  },
  usualResistanceRatio: {
    value: 0.85,
    unit: '1',
    why: 'coil resistance over rated impedance where a sheet gives only the latter',
    source: 'practice'
  },
  resistanceRatioRange: {
    value: [0.6, 1],
    unit: '1',
    why: 'rated impedance is at most 1/0.8 of the lowest modulus, and that is hardly below Re (IEC 60268-5, from memory)',
    source: 'practice'
  },
  pistonDiameterShare: {
    value: 0.82,
    unit: '1',
    why: 'share of the nominal diameter that moves as a piston. 12 in → 0.049 m²',
    source: 'practice'
  },
  nominalAreaShare: {
    value: [0.9, 1.1],
    unit: '1',
    why: 'sd over the circle of the nominal diameter from which on it was probably calculated from that diameter; real cones lie near 0.67',
    source: 'ours'
  },
  xmaxDoubtfulM: {
    value: 0.04,
    unit: 'm',
    why: 'one-way excursion beyond which a sheet probably means peak to peak',
    source: 'ours'
  },
  xmaxDoubtfulRadiusShare: {
    value: 0.25,
    unit: '1',
    why: 'one-way excursion over the cone radius beyond which a sheet probably means peak to peak',
    source: 'ours'
  },
  xmaxTinyM: {
    value: 0.001,
    unit: 'm',
    why: 'below this a driver for low frequencies is hardly described; an inch figure typed as millimetres lands here',
    source: 'ours'
  },
  inductanceRangeH: {
    value: [0.02e-3, 30e-3],
    unit: 'H',
    why: 'coil inductance of drivers for low frequencies',
    source: 'ours'
  },
  ebpLimitsHz: {
    value: [50, 100],
    unit: 'Hz',
    why: 'efficiency bandwidth product fs/Qes: below, closed; above, vented or band-pass',
    source: 'practice'
  }
} as const satisfies DefaultTable

export const driverRules = {
  piston: {
    why: `the piston taken as ${driverDefaults.pistonDiameterShare.value} of the nominal diameter (common practice, no source; ±8 %)`,
    source: 'practice'
  },
  resistance: {
    why: `Re taken as ${driverDefaults.usualResistanceRatio.value} of the rated impedance (common practice, no source)`,
    source: 'practice'
  },
  vasOfStatedAir: {
    why: 'density and speed of sound are stated: Vas is taken in that air',
    source: 'derived'
  },
  vasOfSheet: {
    why: 'a sheet states Vas for air at sea level (20 °C, 101 325 Pa); Cms follows from it and holds at any height',
    source: 'practice'
  },
  statedFor: { why: 'sheets usually print the set in series', source: 'practice' },
  resistanceStatedFor: { why: 'as Bl and the Q of the sheet', source: 'practice' },
  wanted: { why: 'as on the sheet', source: 'practice' }
} as const satisfies DefaultTable
