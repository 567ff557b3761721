/** What a caller says of the whole job, in SI: what was bought, where it goes, what feeds it. */
import type { Strategy } from '../../contract/boxes/words.ts'
import type { CoilConnection } from '../../contract/drivers/words.ts'
import type { Drive } from '../../contract/supply/words.ts'
import type { PlannedKind, PlannedShape } from '../../contract/systems/words.ts'
import type { AirRequest } from '../../domain/air/air.ts'
import type { BoardChoice, BoxDriver, BoxFittings, BoxLimits } from '../../domain/box/request/box-request.ts'
import type { Cabin } from '../../domain/cabin/cabin.ts'
import type { DriverSheet } from '../../domain/driver/driver-parameters.ts'
import type { PlanSignal } from '../electric/plan-signal.ts'
import type { PlanSupply } from '../electric/plan-supply.ts'
import type { StrapRequest } from '../work/restraint.ts'
import type { PlanAmplifier } from './plan-amplifier.ts'
import type { FinishRequest } from './plan-finish.ts'

export interface PlanDriver {
  readonly name?: string
  readonly sheet: DriverSheet
  readonly coils: {
    readonly count: 1 | 2 | 4
    /** Rated impedance of one coil. */
    readonly ratedOhm: number
    readonly statedFor?: CoilConnection
    readonly resistanceStatedFor?: CoilConnection
  }
  readonly mounting?: Omit<BoxDriver, 'count' | 'label' | 'sdM2' | 'xmaxM' | 'centres' | 'face'>
}

export interface PlanEnclosure {
  /** Chosen by driver and space when absent. */
  readonly kind?: PlannedKind
  readonly qtc?: number
  readonly netVolumeM3?: number
  readonly tuningHz?: number
  readonly portShape?: 'round' | 'slot'
  readonly airSpeedMPerS?: number
}

export interface PlanBoard extends BoardChoice {
  readonly thicknessM: number
  readonly frontLayers?: number
  /** Asks for braces up to a top of the band; without it they are set where they fit, up to the crossover. */
  readonly bracing?: { readonly upperHz?: number }
  /** The cup for the wires; a usual one on the back when absent. */
  readonly terminal?: NonNullable<BoxFittings['terminal']>
  readonly sheet?: {
    readonly lengthM: number
    readonly widthM: number
    readonly kerfM?: number
    readonly price?: number
  }
}

export interface PlanCar {
  /** Room for the box. */
  readonly space: BoxLimits & { readonly strategy?: Strategy; readonly shape?: PlannedShape }
  readonly cabin?: Cabin
  readonly drive?: Drive
  /** Amplifier to box, along the cable. */
  readonly speakerCableLengthM?: number
  /** Mass of the vehicle, for holding the box. */
  readonly massKg?: number
  readonly restraint?: StrapRequest
}

export interface PlanRequest {
  readonly name?: string
  readonly driver: PlanDriver
  readonly driverCount: number
  readonly amplifier: PlanAmplifier
  readonly enclosure?: PlanEnclosure
  readonly board: PlanBoard
  readonly car: PlanCar
  readonly supply: PlanSupply
  readonly signal: PlanSignal
  readonly finish?: FinishRequest
  readonly air?: AirRequest
  /** How lengths are written on pages and drawings. */
  readonly paper?: { readonly units?: 'metric' | 'imperial'; readonly inches?: 'decimal' | 'sixteenths' }
}
