import type { PlanAmplifier, PlanDriver } from '../../contract/systems/plan-request.ts'

export interface SearchDriver extends PlanDriver {
  readonly name: string
  /** Of one, in the currency of the amplifiers. */
  readonly price?: number
}

export interface SearchAmplifier extends PlanAmplifier {
  readonly name: string
}

/** Whatever is absent is no limit. */
export interface DesignLimits {
  /** Drivers and amplifier together. */
  readonly pricePerSystem?: number
  readonly fullSineA?: number
  readonly averageA?: number
  /** Outside of the box. */
  readonly outerVolumeM3?: number
  readonly massKg?: number
  readonly f3AtMostHz?: number
  readonly levelAtLeastDb?: number
  /** Peak one way over Xmax. */
  readonly excursionOfXmax?: number
  /** Peak, in any port. */
  readonly airSpeedMPerS?: number
}
