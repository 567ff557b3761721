/** How a gain is set at a dial. */
import type { DefaultTable } from '../../domain/default.ts'

export const gainDefaults = {
  dialDigits: { value: 3, unit: '1', why: 'a dial and a meter are read to three digits', source: 'practice' },
  sameGain: { value: 0.99, unit: '1', why: 'gains that differ by less are one', source: 'ours' }
} as const satisfies DefaultTable
