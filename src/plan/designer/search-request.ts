/** What a search for a design is asked: the parts at hand, the room, the supply, and what must not be exceeded; SI. */
import type { DesignRanking, PlannedKind, PortShape } from '../../contract/systems/words.ts'
import type { AirRequest } from '../../domain/air/air.ts'
import type { PlanSignal } from '../electric/plan-signal.ts'
import type { PlanSupply } from '../electric/plan-supply.ts'
import type { PlanAmplifier } from '../request/plan-amplifier.ts'
import type { FinishRequest } from '../request/plan-finish.ts'
import type { PlanBoard, PlanCar, PlanDriver } from '../request/plan-request.ts'
import type { Criterion } from './search-score.ts'

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

export interface SearchRequest {
  readonly drivers: readonly SearchDriver[]
  readonly driverCounts?: readonly number[]
  readonly amplifiers: readonly SearchAmplifier[]
  readonly kinds?: readonly PlannedKind[]
  /** How ports are sized, as in a plan. */
  readonly port?: { readonly shape?: PortShape; readonly airSpeedMPerS?: number }
  readonly board: PlanBoard
  readonly car: PlanCar
  readonly supply: PlanSupply
  readonly signal?: PlanSignal
  readonly finish?: FinishRequest
  readonly air?: AirRequest
  readonly limits?: DesignLimits
  readonly rankBy?: DesignRanking
  readonly weights?: Partial<Readonly<Record<Criterion, number>>>
  /** Where the level is compared. */
  readonly levelHz?: number
  /** Most designs, and most rejections, in the answer. */
  readonly show?: number
}
