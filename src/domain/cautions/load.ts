/** Cautions of coil wiring and amplifier matching. */
import type { CautionCatalogue } from '../caution.ts'

export const loadCautions = {
  'impedance-dip': {
    level: 'note',
    meaning: 'The modulus of a rated impedance may dip 20 % below it; an amplifier at its minimum load has no reserve.',
    basis: 'IEC 60268-5, from memory'
  },
  'load-below-minimum': {
    level: 'care',
    meaning: 'Some loads lie below what the amplifier may drive; they are marked and must not be wired.',
    basis: "the amplifier's data sheet"
  },
  'no-allowed-load': {
    level: 'stop',
    meaning:
      'No way of joining these coils reaches the minimum load of the amplifier: it would overheat, shut down or fail. Use other coils, fewer drivers on each output, or another amplifier.',
    basis: "the amplifier's data sheet"
  },
  'unequal-power': {
    level: 'care',
    meaning:
      'The coils do not share the power equally: the hottest sets the limit of the whole group, the others idle. Not recommended.',
    basis: "derived from Kirchhoff's laws"
  },
  'all-coils-driven': {
    level: 'note',
    meaning:
      'Every coil of a driver must be driven, equally and in phase: an open coil halves the motor force, a reversed one cancels it.',
    basis: 'common practice, no source'
  },
  'unlike-coils': {
    level: 'care',
    meaning:
      'Coils of different impedance belong to different drivers as a rule: their outputs do not match, and drivers that differ should not share a chamber.',
    basis: 'common practice, no source'
  },
  'drivers-in-series': {
    level: 'note',
    meaning:
      'Drivers in series share one current: each sees the impedance of the others as source resistance, and one broken coil silences its string.',
    basis: "derived from Kirchhoff's laws"
  },
  'no-speaker-cable': {
    level: 'care',
    meaning: 'No usual speaker cable is thick enough for this load and length.',
    basis: '5 % of the load: common practice, no source; ampacity: 33 CFR 183.425 Table 5'
  },
  'speaker-cable-too-thin': {
    level: 'care',
    meaning: 'The speaker cable named carries too little current or has too much resistance for this load and length.',
    basis: '5 % of the load: common practice, no source; ampacity: 33 CFR 183.425 Table 5'
  },
  'target-off': {
    level: 'note',
    meaning: 'No allowed load with equal shares lies at the load asked for; the nearest is given.',
    basis: 'ours: more than 1 % off'
  }
} as const satisfies CautionCatalogue
