import type { PlanAmplifier, PlanDriver } from '../../contract/systems/plan-request.ts'

export interface SearchDriver extends PlanDriver {
  readonly name: string
  /** Of one, in the currency of the amplifiers. */
  readonly price?: number
}

export interface SearchAmplifier extends PlanAmplifier {
  readonly name: string
}
