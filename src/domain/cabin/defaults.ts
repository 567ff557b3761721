/** Judgement values of the cabin's model; none has a published source. */
import type { DefaultTable } from '../default.ts'

export const cabinDefaults = {
  cornerQ: {
    value: 0.7,
    unit: '1',
    why: 'engineering choice: joins the pressure vessel to free radiation without a bump',
    source: 'cabin-shelf'
  },
  leakQ: { value: 0.7, unit: '1', why: 'engineering choice: joins the leak without a bump', source: 'cabin-shelf' },
  leakCornerHz: {
    value: 15,
    unit: 'Hz',
    why: 'engineering choice: cars leak and flex below 8 to 25 Hz',
    source: 'cabin-shelf'
  },
  /** Where the leak corner would let the gain go further, it is raised. */
  maximumGainDb: {
    value: 20,
    unit: 'dB',
    why: 'engineering choice: holds the gain to 20 dB, the most that cars usually show',
    source: 'ours'
  },
  uncertaintyDb: { value: 6, unit: 'dB', why: 'how far real cars lie from the model', source: 'ours' }
} as const satisfies DefaultTable
