/** Request and result of completing a driver's data sheet; SI. */
import type { AirRequest } from '../../contract/acoustics/air.ts'
import type { DriverSheet } from '../../contract/drivers/driver-parameters.ts'
import type { CoilConnection } from '../../contract/drivers/words.ts'

export interface SheetCoils {
  readonly count: number
  /** The connection that Bl, the Q and Le of the sheet belong to. */
  readonly statedFor?: CoilConnection
  /** The connection that Re of the sheet belongs to. */
  readonly resistanceStatedFor?: CoilConnection
  readonly wanted?: CoilConnection
}

export interface DriverParametersRequest {
  readonly driver: DriverSheet
  readonly coils?: SheetCoils
  readonly air?: AirRequest
}
