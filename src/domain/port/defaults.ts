/** What stands in for absent fields of a port, in every room that knows one. */
import type { DefaultTable } from '../default.ts'
import { conventionalEnds } from './end-correction.ts'

export const portDefaults = {
  endFactor: {
    value: conventionalEnds('free', 'flanged'),
    unit: '1',
    why: 'one end flush with a panel (0.85), one end free (0.613)',
    source: 'levine-schwinger-1948'
  }
} as const satisfies DefaultTable
