/** Cautions of the safety rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const safetyCautions = {} as const satisfies CautionCatalogue
