/** What is asked around the planned box. */
import type { DefaultTable } from '../../../domain/default.ts'

export const variationDefaults = {
  allPower: { value: 0.999, unit: '1', why: 'a gain this near to what is borne is all of it', source: 'ours' },
  factors: { value: [0.9, 1.1], unit: '1', why: 'a tenth down and up: what a hand makes of a figure', source: 'ours' },
  mostVoltage: {
    value: 2,
    unit: '1',
    why: 'a limit that not even four times the power reaches is left out',
    source: 'ours'
  }
} as const satisfies DefaultTable
