/** Request and result of completing a driver's data sheet; SI. */
import type { CoilConnection, VasAir } from '../../contract/drivers/words.ts'
import type { AirRequest } from '../air/air.ts'
import type { IdentityCheck } from './consistency.ts'
import type { NamedSlip } from './judge-set.ts'
import type { PartialSmallSignalSet, SmallSignalQuantity, SmallSignalSet } from './small-signal-quantities.ts'

export interface DriverSheet extends PartialSmallSignalSet {
  /** The air Vas was stated for; `reference` when absent. */
  readonly vasAir?: VasAir
  /** Moving mass without air load. */
  readonly mmdKg?: number
  readonly leH?: number
  readonly leParallelOhm?: number
  /** One way, peak. */
  readonly xmaxM?: number
  readonly powerW?: number
  readonly ratedImpedanceOhm?: number
  readonly nominalDiameterM?: number
  readonly level1WDb?: number
  readonly level2V83Db?: number
}

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

export interface Origin {
  readonly origin: 'given' | 'derived' | 'assumed'
  /** The formula or reason behind a derived or assumed value. */
  readonly rule?: string
}

export interface CompletedDriver extends SmallSignalSet {
  readonly vasAir?: VasAir
  readonly leH?: number
  readonly leParallelOhm?: number
  readonly xmaxM?: number
  readonly powerW?: number
}

export interface DriverFigures {
  readonly ebpHz: number
  readonly efficiencyPercent: number
  readonly level1WDb: number
  readonly level2V83Db: number
  readonly levelRated1WDb?: number
  readonly impedancePeakOhm: number
  /** Swept by the cone one way, Sd·Xmax. */
  readonly sweptVolumeM3?: number
  readonly airLoadKg: number
}

export interface DriverParameters {
  readonly driver: CompletedDriver
  readonly origins: { readonly [Name in SmallSignalQuantity]: Origin }
  readonly checks: readonly IdentityCheck[]
  readonly slips: readonly NamedSlip[]
  readonly figures: DriverFigures
  readonly leaning: { readonly kind: 'closed' | 'either' | 'vented'; readonly why: string }
}
