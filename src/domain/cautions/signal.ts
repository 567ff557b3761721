/** Cautions of the signal rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const signalCautions = {} as const satisfies CautionCatalogue
