/** Cautions of coil wiring and amplifier matching. */
import type { CautionCatalogue } from '../caution.ts'

export const loadCautions = {
  'impedance-dip': {
    level: 'note',
    meaning: 'The modulus of a rated impedance may dip 20 % below it; an amplifier at its minimum load has no reserve.',
    basis: 'IEC 60268-5, from memory'
  }
} as const satisfies CautionCatalogue
