/** What stands in for absent fields of a feeder with its branches. */
import type { DefaultTable } from '../../default.ts'

export const feederDefaults = {
  sourceOhm: {
    value: 0,
    unit: 'Ω',
    why: 'source taken as stiff; give its resistance, or describe the battery with currentLimitA',
    source: 'practice'
  },
  rippleA: { why: 'the whole current ripples when nothing stores energy at the amplifiers', source: 'practice' },
  fuseRatingA: {
    why: 'no fuse described: the next standard rating above the full sine, or the maker’s where that carries it',
    source: 'ours'
  },
  joints: { value: 4, unit: '1', why: 'a lug at each end of each conductor', source: 'practice' }
} as const satisfies DefaultTable
