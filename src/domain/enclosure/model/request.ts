/** What a response is asked for: an enclosure around drivers, the source that feeds them, the air, the frequencies. */
import type { AirRequest } from '../../../contract/acoustics/air.ts'
import type { Cabin } from '../../../contract/acoustics/cabin.ts'
import type { DriverRequest } from '../../../contract/drivers/driver.ts'
import type {
  ChamberRequest,
  CustomChamberRequest,
  CustomDriverRequest,
  CustomLeakRequest,
  DriversRequest,
  PassiveRadiatorRequest,
  PortRequest,
  SourceRequest
} from '../../../contract/enclosures/enclosure.ts'
import type { FrequencyRange } from '../../../contract/enclosures/frequencies.ts'
import type { LimitsRequest } from '../../../contract/enclosures/limits.ts'
import type { TimeResponseRequest } from '../../../contract/enclosures/time-response.ts'
import type { PresetKind } from '../../../contract/enclosures/words.ts'
import type { Filter } from '../../filter/filter.ts'
import type { Connection } from '../../network/network.ts'

export interface PresetEnclosureRequest {
  readonly kind: PresetKind
  readonly rear?: ChamberRequest
  readonly front?: ChamberRequest
}

/** `outside` (radiates), `behind` (another half space, not heard), or the name of a chamber. */
type PlaceRequest = string

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
