/** Judgement values of a tolerance run; a result notes each that it used. */
import type { Spread } from '../../../contract/enclosures/tolerance.ts'
import type { Default, DefaultTable } from '../../default.ts'

const trade =
  'engineering choice: no published spread was found; together these give the 8 to 15 % that data sheets promise'
const saw = 'engineering choice: what a careful builder cuts'

/** Judgement values; a result echoes each that it used. */
export const spreadDefaults: Readonly<Record<keyof Spread, Default<number>>> = {
  rePercent: { value: 2, unit: '%', why: trade, source: 'ours' },
  blPercent: { value: 3, unit: '%', why: trade, source: 'ours' },
  mmsPercent: { value: 2, unit: '%', why: trade, source: 'ours' },
  cmsPercent: { value: 8, unit: '%', why: trade, source: 'ours' },
  rmsPercent: { value: 10, unit: '%', why: trade, source: 'ours' },
  sdPercent: { value: 1, unit: '%', why: trade, source: 'ours' },
  lePercent: { value: 5, unit: '%', why: trade, source: 'ours' },
  volumePercent: { value: 1.5, unit: '%', why: saw, source: 'ours' },
  portLengthPercent: { value: 1, unit: '%', why: saw, source: 'ours' },
  portAreaPercent: { value: 1, unit: '%', why: saw, source: 'ours' },
  radiatorMassPercent: { value: 2, unit: '%', why: trade, source: 'ours' },
  radiatorCompliancePercent: { value: 8, unit: '%', why: trade, source: 'ours' },
  lossPercent: {
    value: 30,
    unit: '%',
    why: 'engineering choice: losses of a box are hardly known before it is built',
    source: 'ours'
  },
  temperatureK: { value: 10, unit: 'K', why: 'engineering choice: summer and winter in a heated car', source: 'ours' }
}

export const toleranceDefaults = {
  samples: { value: 500, unit: '1', why: 'enough for the 5 and 95 percentiles to settle', source: 'ours' },
  seed: { value: 1, unit: '1', why: 'the same request gives the same answer', source: 'ours' },
  percentiles: { value: [5, 50, 95], unit: '%', why: 'the middle and the range of nine in ten', source: 'ours' }
} as const satisfies DefaultTable

/** Points solved beside the curve for the figures of each sample. */
export const FIGURE_POINTS = 128
/** Points of all samples together: keeps a run within about a second. */
export const MOST_POINTS = 912_000
