/** What a response is computed at where nothing is asked for. */
import type { DefaultTable } from '../../default.ts'

export const responseDefaults = {
  fromHz: { value: 10, unit: 'Hz', why: 'the range of a bass system', source: 'practice' },
  toHz: { value: 300, unit: 'Hz', why: 'the range of a bass system', source: 'practice' },
  points: { value: 200, unit: '1', why: 'enough for a smooth curve', source: 'ours' },
  durationS: { value: 0.2, unit: 's', why: 'a few periods of the lowest bass', source: 'ours' },
  timePoints: { value: 401, unit: '1', why: 'half a millisecond apart at 200 ms', source: 'ours' }
} as const satisfies DefaultTable
