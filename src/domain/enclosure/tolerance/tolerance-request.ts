/** How far parts differ from what is printed, as one standard deviation each. */

import type { FrequencyRange } from '../../../contract/enclosures/frequencies.ts'
import type { Spread } from '../../../contract/enclosures/tolerance.ts'
import type { SystemRequest } from '../model/request.ts'

export interface ToleranceRequest extends SystemRequest {
  readonly frequenciesHz?: readonly number[] | FrequencyRange
  readonly samples?: number
  readonly seed?: number
  readonly percentiles?: readonly number[]
  readonly spread?: Spread
}
