/** Cautions of the supply, cable and fuse rooms. */
import type { CautionCatalogue } from './entry.ts'

export const electricalCautions = {
  // amplifiers
  'rating-implausible': {
    level: 'care',
    meaning:
      'The on-board fuses could not pass the claimed continuous power: it was calculated with what they pass. If a data sheet with a measured input current shows more, give it and the fuses it belongs to.',
    basis:
      'efficiency × 14.4 V per 12 V × sum of the fuses, derived; fuses do carry brief overload, so this is no proof'
  },
  'efficiency-implausible': {
    level: 'care',
    meaning:
      'The efficiency or input current given lies outside what amplifiers of this class reach; check which load and output it was measured at.',
    basis: 'ranges by class, common practice, no source'
  },
  'supply-type-unknown': {
    level: 'note',
    meaning:
      'It is not known whether the amplifier holds its output when the supply falls: current is calculated as if it did, output as if it did not.',
    basis: 'engineering choice of this service: the safe side of each'
  },
  'parasitic-drain': {
    level: 'care',
    meaning:
      'The amplifiers draw current while switched off; above 1 mA each a parked car’s battery suffers over weeks.',
    basis: 'common practice, no source'
  },
  'sizing-above-nominal': {
    level: 'note',
    meaning:
      'A system voltage above the nominal one was given; a regulated amplifier draws most at low voltage, so nominal is the safe side.',
    basis: 'engineering choice of this service'
  },

  // feeder
  'feed-collapse': {
    level: 'stop',
    meaning:
      'The amplifiers ask for more power than the source can drive through this resistance: the voltage collapses, there is no steady state. Shorten or thicken the run, raise the voltage or lower the power.',
    basis: 'upper limit Vs²/(4·R), derived'
  },
  'below-drop-out': {
    level: 'stop',
    meaning:
      'The voltage at the amplifier lies below the point at which its converter stops; it would switch off on loud passages.',
    basis: 'drop-out voltage of the data sheet, else 10.5 V per 12 V, common practice'
  },
  'collapse-margin': {
    level: 'care',
    meaning: 'The supply collapses at less than twice the power asked for; bass peaks reach twice the average.',
    basis: 'ripple of a sine output without storage, derived'
  },
  'total-drop': {
    level: 'care',
    meaning:
      'Cable, fuse, joints and return together take more than 5 % of nominal voltage with the conductor hot; above 10 % do not build it so. Where the body’s resistance was assumed it counts into no stop: measure it, or run a return cable.',
    basis: 'engineering choice of this service beside the 3 and 10 % classes of ABYC E-11 (second-hand)'
  },
  'conductor-hot': {
    level: 'care',
    meaning: 'At a sustained full sine the conductor is estimated to pass the class of its insulation.',
    basis: 'heat balance of a single cable in still air, derived; Churchill and Chu 1975 from memory'
  },

  // cable
  'composition-unknown': {
    level: 'care',
    meaning:
      'The metal of the cable is not known; it was calculated as aluminium with 10 % copper, the poorest sold as power cable. Full copper of the same size would be lower in resistance by more than a third.',
    basis: 'ASTM B566 class 10A (second-hand); the rule is an engineering choice of this service'
  },
  'insulation-unknown': {
    level: 'note',
    meaning:
      'The insulation class was not given and common vehicle PVC was assumed; a cable printed with a higher class may be thinner where ampacity or the fuse governs.',
    basis: 'SAE PVC class 80 °C, from memory'
  },
  'no-cable-fits': {
    level: 'stop',
    meaning:
      'No size of the series passes every limit. Use parallel runs, each with its own fuse, a shorter way, a better conductor or insulation, or a higher system voltage.',
    basis: 'the limits each size fails are listed beside it'
  },
  'parallel-runs': {
    level: 'care',
    meaning:
      'Parallel runs share the current only if length, size and lugs are the same; each needs its own fuse at the source, and one that opens overloads the rest.',
    basis: 'common practice, no source'
  },
  'chassis-unmeasured': {
    level: 'note',
    meaning:
      'The resistance of the body as a return was assumed; it differs from car to car. Measure the drop between the amplifier’s ground terminal and the battery’s negative post under load.',
    basis: 'common practice, no source'
  },
  'chassis-no-return': {
    level: 'stop',
    meaning:
      'This body is no conductor to rely on: run a return cable of the size of the positive to the battery’s negative post or its ground point.',
    basis: 'engineering choice of this service: composite, bonded and unknown bodies have no published resistance'
  },
  'ground-noise': {
    level: 'care',
    meaning:
      'Supply ripple through a resistance shared with the signal ground is loud enough to hear. Share one ground point with the source unit, use differential inputs, keep power and signal apart; never lift a safety or factory ground.',
    basis: 'voltage of the ripple current over the shared resistance against the signal, derived; threshold our choice'
  },

  // fuse
  'no-fuse-rating': {
    level: 'stop',
    meaning:
      'No standard fuse-link of a suitable family carries this current; split the load into runs with a fuse each.',
    basis: 'rating lists of ISO 8820 families; those of bolt-down types from memory'
  },
  'breaking-capacity': {
    level: 'care',
    meaning:
      'A dead short right behind the fuse may drive more current than it is able to break: it may burst or keep an arc. The strong end of the battery and the cold fuse count here. Use a fuse-link whose maker states more at this voltage, or feed the load from behind a larger fuse.',
    basis:
      '1000 A blade (read), 2000 A bolt-down (scope read); 2 V over the cold cranking current for a warm full battery is our choice. ABYC E-11 asks 1500 A up to 650 A of cold cranking, 3000 A up to 1100 A and 5000 A above for main breakers at 12 to 24 V (second-hand)'
  },
  'fault-current-low': {
    level: 'care',
    meaning:
      'A short circuit at the far end may not drive enough current to open the fuse quickly; the run is long or thin for its fuse.',
    basis: 'three times the rating, ECSS-Q-ST-30-11C 6.17.3 (second-hand)',
    sources: ['fault-multiple']
  },
  'maker-fuse-too-small': {
    level: 'care',
    meaning:
      'The fuse the amplifier’s maker states is below what the wired load draws at full sine; it was not used. Check the load and the power.',
    basis: 'comparison of the stated fuse with the computed current'
  },
  'maker-fuse-not-obeyed': {
    level: 'care',
    meaning:
      'The fuse the amplifier’s maker states is larger than the load needs or the cable carries; it was not used.',
    basis: 'a fuse protects the cable: rating at most its ampacity'
  },
  'maker-fuse-used': {
    level: 'note',
    meaning:
      'The amplifier’s maker states a smaller fuse than the load rule gives, and it still carries the full sine: it was used.',
    basis: 'maker’s data before our rule'
  },
  'fuse-above-onboard': {
    level: 'note',
    meaning:
      'The fuse of the cable is larger than the amplifier’s own fuses together; that is right for the cable, the amplifier stays protected by its own.',
    basis: 'common practice, no source'
  },
  'fuse-too-far': {
    level: 'care',
    meaning:
      'The unfused piece between source and fuse is longer than it should be; beyond 450 mm it needs a full conduit, beyond 1016 mm move the fuse.',
    basis:
      '33 CFR 183.455(b) (read): 7 in, 40 in when sheathed, where the source itself is impractical; 450 mm common practice',
    sources: ['33-cfr-183-455']
  },
  'link-both-ends': {
    level: 'care',
    meaning:
      'Each end of a link between two batteries is a source: a fuse at both ends, each within reach of its battery.',
    basis: 'either battery can feed a fault on the link'
  },
  'selectivity-poor': {
    level: 'note',
    meaning: 'Main and branch fuse are close in rating: a fault behind the branch may open the main fuse as well.',
    basis: 'rating ratio 1.6 of one family, idea of IEC 60269, from memory'
  },
  'branch-unprotected': {
    level: 'stop',
    meaning:
      'A branch thinner than the main fuse allows has no fuse of its own at the block; a fault on it would burn the cable before the main fuse opens.',
    basis:
      'same principle in 46 CFR 111.50-5(a)(3), read: a branch goes unfused only if it carries the upstream rating',
    sources: ['46-cfr-111-50-5']
  },
  'cable-unguarded': {
    level: 'stop',
    meaning:
      'The fuse before this cable is larger than the cable carries: a fault or overload would burn it first. Fit a smaller fuse if the load allows, else a larger cable.',
    basis: 'rating at most the ampacity of the cable'
  },
  'fuse-overcurrent': {
    level: 'note',
    meaning:
      'A fuse does not hold current at its rating: a third above it may flow for half an hour. That is why the rating stays at or below what the cable carries.',
    basis: 'operating-time limits of blade fuse-links, second-hand'
  },
  'time-current-uncertain': {
    level: 'note',
    meaning:
      'The operating times of this family are recalled, not read; take the maker’s curve before relying on them.',
    basis: 'ISO 8820-5 and 8820-6 times from memory, low confidence'
  }
} as const satisfies CautionCatalogue
