/** Cautions of the acoustic rooms. */
import type { CautionCatalogue } from '../caution.ts'

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
  'port-air-speed': {
    level: 'care',
    meaning: 'Air moves fast enough in a port to be heard, and to lose level at high drive. Use more port area.',
    basis: 'peak above 17 m/s (5 % of the speed of sound) is a usual bound; common practice, no source'
  }
} as const satisfies CautionCatalogue
