/** What a response is asked for: an enclosure around drivers, the source that feeds them, the air, the frequencies. */
import type { AirRequest } from '../../air/air.ts'
import type { Cabin } from '../../cabin/cabin.ts'
import type { DriverRequest } from '../../driver/driver.ts'
import type { Filter } from '../../filter/filter.ts'
import type { Connection } from '../../network/network.ts'
import type { LimitsRequest } from '../limits/limits-request.ts'

export interface PortRequest {
  /** Equal ports. */
  readonly count?: number
  /** Of one port. */
  readonly areaM2: number
  /** Physical length. */
  readonly lengthM: number
  /** Sum of both end factors, times the radius of one port. */
  readonly endFactor?: number
  readonly lossQ?: number
}

export interface PassiveRadiatorRequest {
  readonly count?: number
  readonly areaM2: number
  /** Of one unit, with its air load and added weight. */
  readonly massKg: number
  readonly complianceMPerN: number
  /** Mechanical Q of the unit alone in free air. */
  readonly qm?: number
}

export interface ChamberRequest {
  /** Acoustic volume for all drivers together, nothing subtracted. */
  readonly netVolumeM3: number
  readonly leakQ?: number
  readonly absorptionQ?: number
  readonly port?: PortRequest
  readonly passiveRadiators?: PassiveRadiatorRequest
}

const presetKinds = [
  'infinite-baffle',
  'closed',
  'vented',
  'passive-radiator',
  'band-pass-4',
  'band-pass-6-parallel',
  'band-pass-6-series'
] as const
export type PresetKind = (typeof presetKinds)[number]

export interface PresetEnclosureRequest {
  readonly kind: PresetKind
  readonly rear?: ChamberRequest
  readonly front?: ChamberRequest
}

/** `outside` (radiates), `behind` (another half space, not heard), or the name of a chamber. */
export type PlaceRequest = string

export interface CustomChamberRequest {
  readonly name: string
  readonly netVolumeM3: number
  readonly leakQ?: number
  readonly absorptionQ?: number
  /** Where the two Qs hold. */
  readonly lossHz?: number
}

export interface CustomPortRequest extends PortRequest {
  readonly name: string
  readonly from: PlaceRequest
  readonly to: PlaceRequest
  /** Where lossQ holds. */
  readonly lossHz?: number
}

export interface CustomRadiatorRequest extends PassiveRadiatorRequest {
  readonly name: string
  readonly from: PlaceRequest
  readonly to: PlaceRequest
}

export interface CustomLeakRequest {
  readonly from: PlaceRequest
  readonly to: PlaceRequest
  readonly resistancePaSPerM3: number
}

export interface CustomDriverRequest {
  readonly name: string
  readonly front: PlaceRequest
  readonly rear: PlaceRequest
  readonly count?: number
  readonly inSeries?: number
  /** Wired against the others. */
  readonly inverted?: boolean
}

/** Nodes and elements given directly, for what no preset knows. */
export interface CustomEnclosureRequest {
  readonly kind: 'custom'
  readonly chambers?: readonly CustomChamberRequest[]
  readonly ports?: readonly CustomPortRequest[]
  readonly passiveRadiators?: readonly CustomRadiatorRequest[]
  readonly leaks?: readonly CustomLeakRequest[]
  readonly driverGroups: readonly CustomDriverRequest[]
  /** How the groups are joined. */
  readonly connection?: Connection
}

export type EnclosureRequest = PresetEnclosureRequest | CustomEnclosureRequest

/** Pairs of drivers that share a small chamber between them. */
export interface IsobaricRequest {
  readonly couplingVolumeM3: number
  /** How the outer and the inner drivers are joined. */
  readonly connection?: Connection
}

export interface DriversRequest {
  /** Every driver counts, both of an isobaric pair too. */
  readonly count?: number
  /** Drivers in each string; the strings lie in parallel. */
  readonly inSeries?: number
  readonly isobaric?: IsobaricRequest
}

export interface SourceRequest {
  /** RMS, before the series resistance. */
  readonly voltageV?: number
  /** In place of the voltage: what the source would give into loadOhm. */
  readonly powerW?: number
  readonly loadOhm?: number
  readonly seriesOhm?: number
}

/** Asks for the response in time. */
export interface TimeResponseRequest {
  readonly durationS?: number
  readonly points?: number
}

export interface FrequencyRange {
  readonly fromHz: number
  readonly toHz: number
  readonly points: number
}

/** Everything that determines the network. */
export interface SystemRequest {
  readonly driver: DriverRequest
  readonly drivers?: DriversRequest
  readonly enclosure: EnclosureRequest
  readonly source: SourceRequest
  readonly air?: AirRequest
  /** Before the amplifier. */
  readonly filters?: readonly Filter[]
}

export interface ResponseRequest extends SystemRequest {
  readonly timeResponse?: TimeResponseRequest
  readonly frequenciesHz?: readonly number[] | FrequencyRange
  readonly cabin?: Cabin
  /** Present, even empty: what the system can do at full power, and what that costs. */
  readonly limits?: LimitsRequest
}
