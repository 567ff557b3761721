/** The board where none is named. */
import type { DefaultTable } from '../default.ts'

export const boardDefaults = {
  material: { value: 'mdf', unit: 'word', why: 'the usual board for boxes', source: 'practice' }
} as const satisfies DefaultTable
