/** Cautions of coil wiring and amplifier matching. */
import type { CautionCatalogue } from './entry.ts'

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
      'Connect every coil of a driver, with the same polarity: an open coil halves the motor force, a reversed one cancels it.',
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
  'power-unknown': {
    level: 'care',
    meaning:
      'The power at the wired load is not published. It does not follow from a higher load: supply, current limit and heat bend the 1/Z law.',
    basis: "the amplifier's data sheet"
  },
  'under-powered': {
    level: 'note',
    meaning:
      'The amplifier gives less than three quarters of what the drivers take. Quieter, and safe as long as it is not turned up into clipping, for a square wave has twice the power of the sine with the same peak.',
    basis: 'band of 0.75 to 1.5: common practice, no source; square wave: derived'
  },
  'over-powered': {
    level: 'care',
    meaning:
      'The amplifier can give more than one and a half times what the drivers take: only the gain setting and a protective high-pass stand between it and burnt coils.',
    basis: 'band of 0.75 to 1.5: common practice, no source'
  },
  'rating-below-minimum': {
    level: 'care',
    meaning: 'The data sheet states a power at a load below its own minimum load; the minimum is obeyed.',
    basis: "the amplifier's data sheet"
  },
  'bridged-terminals': {
    level: 'care',
    meaning:
      'Both terminals of a bridged pair are live. Grounding one, or joining it to another output, destroys the amplifier and can start a fire.',
    basis: 'derived: neither output of a bridge is at ground'
  },
  'bridged-power-derived': {
    level: 'note',
    meaning: 'No bridged power is published for this load; twice the power of one channel at half the load was taken.',
    basis: 'derived: each channel of a bridged pair drives half the load'
  },
  'output-touch-voltage': {
    level: 'care',
    meaning:
      'Loudspeaker terminals of strong amplifiers pass the 30 V below which no protection is asked for: insulate every joint, clip probes on with the amplifier off.',
    basis: 'UN R100, voltage class of up to 30 V AC, wording seen in a national copy (second-hand)',
    sources: ['un-r100']
  },
  'equal-gains': {
    level: 'note',
    meaning:
      'Several outputs drive one group of drivers: unequal gains or polarity load one driver more or cancel bass.',
    basis: 'common practice, no source'
  },
  'no-speaker-cable': {
    level: 'care',
    meaning: 'No usual loudspeaker cable is thick enough for this load and length.',
    basis: '5 % of the load: common practice, no source; ampacity: 33 CFR 183.425 Table 5 (read)',
    sources: ['33-cfr-183-425']
  },
  'speaker-cable-too-thin': {
    level: 'care',
    meaning:
      'The loudspeaker cable named carries too little current or has too much resistance for this load and length.',
    basis: '5 % of the load: common practice, no source; ampacity: 33 CFR 183.425 Table 5 (read)',
    sources: ['33-cfr-183-425']
  },
  'unregulated-sizing': {
    level: 'note',
    meaning:
      'An amplifier that does not regulate draws more the higher the supply: fuse and cable are sized at charging voltage, the larger case.',
    basis: 'rails follow the supply, derived; 14.4 V per 12 V while charging, common practice'
  },
  'not-planned': {
    level: 'care',
    meaning: 'A part of the system is not planned here: it stands in no bill and no picture.',
    basis: 'scope of this service'
  },
  'target-off': {
    level: 'note',
    meaning:
      'No allowed load with equal shares lies at the load asked for; the nearest is given, or the most even where no network shares the power equally.',
    basis: 'ours: more than 1 % off'
  }
} as const satisfies CautionCatalogue
