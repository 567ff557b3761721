/** Cautions of the driver rooms. */
import type { CautionCatalogue } from '../caution.ts'

export const driverCautions = {} as const satisfies CautionCatalogue
