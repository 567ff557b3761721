/** How far parts differ from what is printed, as one standard deviation each. */
import type { Spread } from '../../../contract/enclosures/tolerance.ts'
import type { FrequencyRange, SystemRequest } from '../model/request.ts'

export interface ToleranceRequest extends SystemRequest {
  readonly frequenciesHz?: readonly number[] | FrequencyRange
  readonly samples?: number
  readonly seed?: number
  readonly percentiles?: readonly number[]
  readonly spread?: Spread
}

const trade =
  'engineering choice: no published spread was found; together these give the 8 to 15 % that data sheets promise'
const saw = 'engineering choice: what a careful builder cuts'

/** Judgement values; a result echoes each that it used. */
export const spreadDefaults: Readonly<Record<keyof Spread, { readonly value: number; readonly why: string }>> = {
  rePercent: { value: 2, why: trade },
  blPercent: { value: 3, why: trade },
  mmsPercent: { value: 2, why: trade },
  cmsPercent: { value: 8, why: trade },
  rmsPercent: { value: 10, why: trade },
  sdPercent: { value: 1, why: trade },
  lePercent: { value: 5, why: trade },
  volumePercent: { value: 1.5, why: saw },
  portLengthPercent: { value: 1, why: saw },
  portAreaPercent: { value: 1, why: saw },
  radiatorMassPercent: { value: 2, why: trade },
  radiatorCompliancePercent: { value: 8, why: trade },
  lossPercent: { value: 30, why: 'engineering choice: losses of a box are hardly known before it is built' },
  temperatureK: { value: 10, why: 'engineering choice: summer and winter in a heated car' }
}

export const toleranceDefaults = {
  samples: { value: 500, why: 'enough for the 5 and 95 percentiles to settle' },
  seed: { value: 1, why: 'the same request gives the same answer' },
  percentiles: [5, 50, 95]
} as const

/** Points solved beside the curve for the figures of each sample. */
export const FIGURE_POINTS = 128
/** Points of all samples together: keeps a run within about a second. */
export const MOST_POINTS = 912_000
