/** What a panel has to reach; engineering choices of this service, not a standard. */
import type { DefaultTable } from '../../default.ts'

export const bracingDefaults = {
  upperHz: { value: 120, unit: 'Hz', why: 'a usual low-pass corner', source: 'practice' },
  frequencyRatio: {
    value: 1.5,
    unit: '1',
    why: 'lowest panel frequency over the top of the band',
    source: 'bracing-targets'
  },
  volumeShare: {
    value: 0.02,
    unit: '1',
    why: "share of the cone's volume that all panels together may move",
    source: 'bracing-targets'
  },
  deflectionM: { value: 0.15e-3, unit: 'm', why: 'furthest a panel may bend', source: 'bracing-targets' }
} as const satisfies DefaultTable
