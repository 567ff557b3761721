/** Every caution the service can give; the type, the catalogue resource and the documentation derive from it. */
import { acousticCautions } from './acoustic.ts'
import { amplifierCautions } from './amplifier.ts'
import { boxCautions } from './box.ts'
import { conductorCautions } from './conductor.ts'
import { driverCautions } from './driver.ts'
import { electricalCautions } from './electrical.ts'
import { energyCautions } from './energy.ts'
import type { CautionCatalogue } from './entry.ts'
import { loadCautions } from './load.ts'
import { wholePlanCautions } from './plan.ts'
import { safetyCautions } from './safety.ts'
import { signalCautions } from './signal.ts'
import { workshopCautions } from './workshop.ts'

export const cautionCatalogue = {
  ...acousticCautions,
  ...amplifierCautions,
  ...boxCautions,
  ...conductorCautions,
  ...driverCautions,
  ...electricalCautions,
  ...energyCautions,
  ...loadCautions,
  ...wholePlanCautions,
  ...safetyCautions,
  ...signalCautions,
  ...workshopCautions
} as const satisfies CautionCatalogue
export type CautionCode = keyof typeof cautionCatalogue
/** In the order of the catalogue. */
export const cautionCodes = Object.keys(cautionCatalogue) as readonly CautionCode[]
