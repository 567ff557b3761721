/** Cautions of the electrical rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const electricalCautions = {} as const satisfies CautionCatalogue
