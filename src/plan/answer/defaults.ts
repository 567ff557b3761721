/** Judgement values of what a plan tells first, and of when it counts as kept. */
import type { DefaultTable } from '../../domain/default.ts'

export const answerDefaults = {
  mostOnPageOne: {
    value: 7,
    unit: '1',
    why: 'warnings on the first page, what gives way among them: more is read by nobody',
    source: 'ours'
  },
  mostGrave: { value: 4, unit: '1', why: 'of them at first those that can hurt someone', source: 'ours' },
  fewestOfDesign: {
    value: 2,
    unit: '1',
    why: 'then as many of what disappoints, before what else can hurt',
    source: 'ours'
  },
  bandDropDb: {
    value: 6,
    unit: 'dB',
    why: 'below the loudest: half as loud to the ear, roughly, and what a band of use is usually taken to',
    source: 'ours'
  },
  sameVolumeShare: { value: 0.01, unit: '1', why: 'a volume within the step of a saw is kept', source: 'ours' },
  sameTuningShare: { value: 0.01, unit: '1', why: 'a tuning within the step of a saw is kept', source: 'ours' },
  sameQtcShare: { value: 0.02, unit: '1', why: 'a Qtc within the step of a saw is kept', source: 'ours' },
  leastMissPercent: {
    value: 0.1,
    unit: '%',
    why: 'a volume is not promised closer than a tenth of a percent',
    source: 'ours'
  }
} as const satisfies DefaultTable
