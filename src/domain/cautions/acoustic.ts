/** Cautions of the acoustic rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const acousticCautions = {} as const satisfies CautionCatalogue
