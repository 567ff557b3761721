/** A feeder as it stands: source, trunk, block, branches, amplifiers. */
import type { FuseType, feederLevels, GaugeSystem } from '../../../contract/supply/words.ts'
import type { ConductorRequest } from '../cable/conductor-resistance.ts'
import type { ReturnPath } from '../choice/cable-request.ts'
import type { BatterySource } from '../fuse/battery-source.ts'
import type { SurroundingsRequest } from '../fuse/protected-cable.ts'
import type { AmplifierOnSupply } from '../load/amplifier-draw.ts'

export interface FeederCable extends ConductorRequest, SurroundingsRequest {
  readonly designation: string
  readonly gaugeSystem?: GaugeSystem
  readonly positiveLengthM: number
  /** Equal runs side by side. */
  readonly runs?: number
  readonly return?: ReturnPath
}

/** One stretch of the loop; everything described adds up. */
export interface FeederStage {
  readonly cable?: FeederCable
  readonly fuse?: { readonly ratingA: number; readonly type?: FuseType; readonly resistanceOhm?: number }
  /** Without a fuse on purpose. */
  readonly unfused?: boolean
  readonly joints?: number
  readonly jointOhm?: number
  /** Anything else in this stretch, out and back; or all of it. */
  readonly resistanceOhm?: number
}

export interface FeederAmplifier extends AmplifierOnSupply {
  /** Drawn power or current as they are, in place of power and class. */
  readonly inputPowerW?: number
  readonly currentA?: number
  /** On top of power over efficiency, where a sheet states idle draw apart. */
  readonly extraPowerW?: number
  readonly dropOutV?: number
  /** Largest conductor its terminal takes. */
  readonly terminalAreaM2?: number
  /** External fuse its maker states. */
  readonly makerFuseA?: number
  readonly branch?: FeederStage
}

export interface FeederSource {
  readonly voltageV: number
  readonly resistanceOhm?: number
  readonly currentLimitA?: number
  readonly baseLoadA?: number
  readonly battery?: BatterySource
}

export interface FeederRequest {
  readonly systemVoltageV: number
  readonly source: FeederSource
  readonly trunk?: FeederStage
  readonly amplifiers: readonly FeederAmplifier[]
  readonly level?: (typeof feederLevels)[number]
  /** Holds every conductor at this temperature; else it is estimated from its current. */
  readonly conductorTemperatureC?: number
  readonly groundNoise?: { readonly sharedOhm: number; readonly signalV: number; readonly rippleA?: number }
}
