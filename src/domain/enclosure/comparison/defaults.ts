/** Where designs are compared, and from what on a difference is one. */
import type { DefaultTable } from '../../default.ts'

export const comparisonDefaults = {
  fromHz: { value: 20, unit: 'Hz', why: 'below it few recordings reach', source: 'practice' },
  toHz: { value: 120, unit: 'Hz', why: 'above it the front loudspeakers play', source: 'practice' },
  points: { value: 63, unit: '1', why: 'twenty-four to the octave', source: 'ours' },
  levelDb: { value: 0.1, unit: 'dB', why: 'far below what is heard', source: 'ours' },
  share: { value: 0.005, unit: '1', why: 'below what a builder can measure', source: 'ours' }
} as const satisfies DefaultTable

/** Third octaves of the bass at which designs are compared, here and in plans. */
export const COMPARED_HZ = [25, 31.5, 40, 50, 63] as const
