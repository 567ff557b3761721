/** How the work is laid over days. */
import type { DefaultTable } from '../../domain/default.ts'

export const dayDefaults = {
  dayMinutes: {
    value: 480,
    unit: 'min',
    why: 'a day in the workshop; what cures goes on through the night',
    source: 'ours'
  }
} as const satisfies DefaultTable
