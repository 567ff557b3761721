/** Cautions of the acoustic rooms. */
import type { CautionCatalogue } from './entry.ts'

export const acousticCautions = {
  'cabin-model': {
    level: 'note',
    meaning:
      'The level at the seat comes from a model of the cabin, not from the car. Measure the transfer curve and give it.',
    basis: 'engineering choice: cars leak and flex differently'
  },
  'cabin-modes': {
    level: 'note',
    meaning: 'The curve at the seat runs above the lowest standing wave of the cabin, which the model leaves out.',
    basis: 'Morse & Ingard 1968 (from memory): lowest mode c/(2L)'
  },
  'cabin-curve-held': {
    level: 'note',
    meaning: 'Frequencies lie beyond the ends of the measured cabin curve; its last values are held there.',
    basis: 'engineering choice'
  },
  'excursion-above-xmax': {
    level: 'care',
    meaning:
      'At this drive the cone is asked to travel further than it moves linearly: distortion, and damage further out. Lower the drive, filter the lowest frequencies or change the enclosure. Curves are linear and do not show it.',
    basis: 'Xmax of the driver against the computed peak excursion'
  },
  'unprotected-below-tuning': {
    level: 'care',
    meaning:
      'Below the tuning the air in the port, or the passive radiator, no longer restrains the cone; at this power it exceeds Xmax there. Put the high-pass named in `limits.protection` before the amplifier.',
    basis: 'computed peak excursion below the lowest tuning against Xmax; from twice Xmax on it is a `stop`'
  },
  'passive-radiator-excursion': {
    level: 'care',
    meaning: 'A passive radiator is asked to travel further than it can. Use a larger or a second one, or less drive.',
    basis: 'stated travel against the computed peak excursion'
  },
  'passive-radiator-travel-unknown': {
    level: 'care',
    meaning:
      'The largest level was found without the travel of the passive radiators, which often is the first limit. Give `passiveRadiatorXmaxMm`.',
    basis: 'no travel was stated'
  },
  'air-spring-stiffens': {
    level: 'note',
    meaning:
      'At this drive the air of a chamber is squeezed so far that its spring is no longer linear: it adds distortion and pushes hard on the walls. Use a larger chamber or less drive, and brace it. A `note` from 8 % of the volume, `care` from 16 %.',
    basis:
      'second harmonic of adiabatic air (γ+1)/4·ΔV/V, derived: 5 % at 8 % of the volume; the two shares are an engineering choice'
  },
  'chamber-too-small': {
    level: 'care',
    meaning:
      'A chamber holds less than a few times what its cones sweep, or less than the cones themselves take: no such box can be built, and what is computed for it means little.',
    basis: 'four times Sd·Xmax, or 0.1·Sd^1.5 without an Xmax: an engineering choice of this service'
  },
  'chamber-taken-as-tight': {
    level: 'note',
    meaning:
      'No leak was stated for an opened chamber, so it was computed without one. Real boxes leak, and are quieter at their tuning. Give `leakQ`: 7 is the usual start, 5 to 10 are measured.',
    basis: 'level at the tuning with and without a leak of Q 7 (Small 1973 part III, opening read: 5 to 10), computed'
  },
  'drive-above-thermal-rating': {
    level: 'care',
    meaning:
      'The drive, held for long at the frequency named, puts more heat into the coil than its rating allows. Use less drive, or state the duty factor of real music.',
    basis: 'rating read as heat in the coil or as voltage, see `limits.thermalReading`'
  },
  'coil-too-hot': {
    level: 'stop',
    meaning: 'At this drive the coil settles at a temperature that its adhesive cannot survive.',
    basis: 'steady heat flow; the temperature limit is an engineering choice unless given'
  },
  'amplifier-out-of-reach': {
    level: 'care',
    meaning:
      'The drive, with the boost of the filters before the amplifier, asks for more voltage or current than that gives: it clips or shuts off. Boost less, or drive less.',
    basis: 'stated voltage and current of the amplifier'
  },
  'level-lost-at-drive': {
    level: 'note',
    meaning:
      'At this drive warm coils or fast air in the ports take more than 3 dB from the level. The loss is an estimate: the jets are taken as quasi-steady, within about ±50 %.',
    basis: 'engineering choice of 3 dB; models as documented'
  },
  'port-jets-left-out': {
    level: 'note',
    meaning:
      'An enclosure of many separate ports was asked for at so many frequencies that the losses of their jets were left out of the levels at full power.',
    basis: 'engineering choice: keeps an answer within a fraction of a second'
  },
  'port-air-speed': {
    level: 'care',
    meaning:
      'Air moves fast enough in a port to be heard, and to lose level at high drive. Use more port area. A `note` from 17 m/s (straight ports with sharp ends are heard), `care` from 25 m/s (flared ones too), `stop` from 34 m/s.',
    basis: 'peak of 17 m/s is 5 % and 34 m/s 10 % of the speed of sound; 25 m/s for flares; common practice, no source'
  },
  'no-box-suits': {
    level: 'care',
    meaning:
      'None of the enclosures asked for suits the driver and the space. Each candidate says what is against it: another kind, more space, or another driver.',
    basis: 'limits of sizing an enclosure, an engineering choice of this service'
  },
  'lining-in-opened-box': {
    level: 'care',
    meaning:
      'Stuffing a vented, passive-radiator or band-pass box weakens its opening. Line the walls, keep the opening clear.',
    basis: 'common practice, no source; absorption Q of a filled box 5 to 10'
  },
  'cone-unloaded-below-tuning': {
    level: 'note',
    meaning:
      'Below the tuning the air in the opening moves with the cone instead of against it, and excursion grows as in free air. A high-pass at about 0.7 to 0.9 of the tuning protects the driver.',
    basis: 'follows from the network; the corner is common practice, no source'
  },
  'dimensions-held': {
    level: 'note',
    meaning: 'A tolerance run varies the drivers and the air of a custom enclosure, but holds the size of its parts.',
    basis: 'its parts have no names in common with other enclosures'
  },
  'excursion-by-chance': {
    level: 'care',
    meaning:
      'With the spread of real parts, more than one system in twenty travels beyond Xmax at this drive. Leave room.',
    basis: 'share of the samples; 95 % is an engineering choice'
  },
  'port-does-not-fit': {
    level: 'care',
    meaning:
      'No port of the kind asked for keeps the tuning, the air speed and the space at once. The answer lists what would: a bend, less area at more speed, a larger box, another tuning, passive radiators.',
    basis: 'computed; limits of the port room, an engineering choice of this service'
  },
  'port-speed-unchecked': {
    level: 'note',
    meaning: 'Without a driver and its drive, a swept volume or a flow, the air speed in the port is not known.',
    basis: 'engineering choice of this service'
  },
  'port-pipe-resonance': {
    level: 'note',
    meaning:
      'A port resonates as an open pipe where it is half a wave long, and lets the upper bass and noise through there. Keep the low-pass well below.',
    basis: 'c/(2·Leff); four times the low-pass corner is an engineering choice of this service'
  },
  'port-large-for-box': {
    level: 'note',
    meaning:
      'The air in the port is no longer small against the air in the box: the simple formula tunes too high by 3 % at a fifth, 7 % at a half.',
    basis: 'derived: open pipe on a compliance, x·tan x = port volume over box volume'
  },
  'slot-end-uncertain': {
    level: 'note',
    meaning:
      'The exact length of a slot beside a wall is uncertain: it drags more air with it than one standing free. Both ways of counting are given; cut it long, measure, trim.',
    basis: 'Kergomard & Garcia 1987 (from memory) and mirror image; ±10 % of the end correction'
  }
} as const satisfies CautionCatalogue
