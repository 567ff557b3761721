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
  }
} as const satisfies CautionCatalogue
