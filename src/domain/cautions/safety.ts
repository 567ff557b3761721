/** Cautions of the safety rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const safetyCautions = {
  'hearing-exposure': {
    level: 'care',
    meaning:
      'The level at the seat can exceed the recommended exposure limit of 85 dB A-weighted over eight hours; each 3 dB more halves the time.',
    basis: 'NIOSH publication 98-126, 1998 (second-hand)'
  }
} as const satisfies CautionCatalogue
