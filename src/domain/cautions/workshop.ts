/** Cautions of the workshop rooms: sheets, materials, order of work, restraint. */
import type { CautionCatalogue } from '../caution.ts'

export const workshopCautions = {
  'sheet-plan-above-bound': {
    level: 'note',
    meaning:
      'The cut plan uses more than 5 % more sheets than the proved lower bound; the message says what stands between.',
    basis: 'our choice of 5 %'
  },
  'narrow-strip': {
    level: 'care',
    meaning:
      'A panel is so narrow that the hand comes near the blade; use a push stick, or cut it from a wider part with a clamped rail.',
    basis: 'common practice, no source'
  }
} as const satisfies CautionCatalogue
