/** How the drivers end up electrically, for the acoustic parts. */
import type { CoilConnection } from '../../contract/drivers/words.ts'

export interface JoinedDrivers {
  readonly connection: CoilConnection
  readonly driversInSeries: number
  readonly loadOhm: number
  readonly outputs: number
  /** Sum of the ratings of the drivers on one output. */
  readonly driversPowerW: number
  readonly bridged: boolean
  readonly targetVoltageV: number
  /** RMS each output can give into its load. */
  readonly amplifierVoltageV: number
  /** RMS of all outputs together, as the amplifier can give it into this load. */
  readonly amplifierPowerW: number
  /** The same, or that of the rating where only a lower bound is known: what the supply is sized for. */
  readonly supplyPowerW: number
  /** RMS of all outputs together after the gain is set. */
  readonly powerW: number
  /** Of each output, where the gain is set for less than amplifier and drivers bear. */
  readonly gainPowerW?: number
  /** RMS of all outputs together that amplifier and drivers bear. */
  readonly usablePowerW: number
  /** Of the loudspeaker cable. */
  readonly seriesOhm: number
}
