/** Cautions of the box rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const boxCautions = {} as const satisfies CautionCatalogue
