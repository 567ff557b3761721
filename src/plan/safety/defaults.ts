/** From where on something of the work is a danger. */
import type { DefaultTable } from '../../domain/default.ts'

export const safetyDefaults = {
  strongMagnetKg: { value: 4, unit: 'kg', why: 'above this the magnet of a driver crushes fingers', source: 'ours' }
} as const satisfies DefaultTable
