/** Corners that stand in where none is given, for every room that needs one. */
import type { DefaultTable } from '../default.ts'

export const filterDefaults = {
  lowPassHz: { value: 80, unit: 'Hz', why: 'usual hand-over to the front speakers', source: 'practice' },
  /** It lies at 0.7 to 0.9 of the tuning. */
  highPassOfTuning: {
    value: 0.8,
    unit: '1',
    why: 'protective high-pass a third of an octave below the tuning; give excursionLimitHz from the response instead',
    source: 'practice'
  }
} as const satisfies DefaultTable
