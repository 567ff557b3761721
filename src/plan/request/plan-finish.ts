/** How the box is lined and covered, where the caller does not say. */
import type { FinishRequest } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'

export interface Finish {
  readonly lined: boolean
  readonly covered: boolean
}

/** Carpet on one face of the box. Common practice, no source. */
export const COVERING_M = 0.004

/** A pad of polyester wadding on the walls. Common practice, no source. */
export const LINING = { thicknessM: 0.025, densityKgPerM3: 20, fibre: 'polyester' } as const

export function resolvedFinish(finish: FinishRequest | undefined, assumed: Assumptions): Finish {
  return {
    lined: assumed.or(
      finish?.lined,
      'finish.lined',
      true,
      'walls lined with 25 mm of wadding, as is usual; it damps standing waves'
    ),
    covered: assumed.or(
      finish?.covered,
      'finish.covered',
      true,
      'covered with boot carpet; 4 mm a face are taken off the space'
    )
  }
}
