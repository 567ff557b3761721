/** The air where nothing is said of it. */
import { STANDARD_PRESSURE_PA } from '../constants.ts'
import type { DefaultTable } from '../default.ts'

export const airDefaults = {
  temperatureC: { value: 20, unit: '°C', why: 'room temperature', source: 'practice' },
  /** ISO 2533, from memory. */
  pressurePa: {
    value: STANDARD_PRESSURE_PA,
    unit: 'Pa',
    why: 'standard atmosphere at sea level',
    source: 'practice'
  }
} as const satisfies DefaultTable
