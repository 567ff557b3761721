/** Request and result of sizing a port; SI. */
import type { EndModel, EndSituation, PortMouth, SlotWalls, wayOutChanges } from '../../../contract/ports/words.ts'
import type { AirRequest } from '../../air/air.ts'
import type { DriverRequest } from '../../driver/driver.ts'
import type { DriversRequest, SourceRequest } from '../../enclosure/model/request.ts'
import type { Filter } from '../../filter/filter.ts'

export interface RoundPortWish {
  readonly kind: 'round'
  readonly count?: number
  readonly diameterM?: number
  readonly lengthM?: number
  /** Radius of the rounding at both mouths; in the length. */
  readonly flareRadiusM?: number
}

export interface SlotPortWish {
  readonly kind: 'slot'
  readonly count?: number
  readonly widthM: number
  readonly heightM?: number
  readonly lengthM?: number
  readonly walls?: SlotWalls
  /** Clear height of the box beside a full-width slot, the slot in it. */
  readonly chamberHeightM?: number
}
export type PortWish = RoundPortWish | SlotPortWish

export interface PortSizingRequest {
  readonly netVolumeM3: number
  readonly tuningHz?: number
  readonly air?: AirRequest
  readonly driver?: DriverRequest
  readonly drivers?: DriversRequest
  readonly source?: SourceRequest
  /** Before the amplifier: they weigh the flow. */
  readonly filters?: readonly Filter[]
  readonly leakQ?: number
  /** N·Sd·Xmax, one way, peak: in place of the driver. */
  readonly sweptVolumeM3?: number
  readonly peakFlowM3PerS?: number
  readonly airSpeedLimitMPerS?: number
  readonly mouth?: PortMouth
  /** Lowest frequency at which the flow is looked at. */
  readonly highPassHz?: number
  readonly lowPassHz?: number
  readonly port?: PortWish
  readonly ends?: { readonly inner?: EndSituation; readonly outer?: EndSituation }
  readonly endModel?: EndModel
  /** Mitred right-angle bends. */
  readonly bends?: number
  readonly space?: { readonly straightM?: number; readonly bentM?: number }
}

export interface PortDemand {
  readonly by: 'network' | 'swept-volume' | 'given-flow'
  /** Peak through all ports. */
  readonly peakFlowM3PerS: number
  readonly peakFlowHz?: number
  readonly flowAtTuningM3PerS?: number
  readonly limitMPerS: number
  /** Of all ports together. */
  readonly areaM2: number
  /** With the drive held back to Xmax wherever it would pass it. */
  readonly excursionLimitedAreaM2?: number
  /** Small's rule S ≥ 0.8·fB·VD. */
  readonly ruleAreaM2?: number
}

export interface PortDesign {
  readonly kind: 'round' | 'slot'
  readonly name: string
  readonly count: number
  readonly diameterM?: number
  readonly widthM?: number
  readonly heightM?: number
  /** Of one port. */
  readonly areaM2: number
  readonly totalAreaM2: number
  /** Physical, along the centre line. */
  readonly lengthM: number
  readonly effectiveLengthM: number
  /** Both ends together, over the radius of one port. */
  readonly endFactor: number
  readonly bends: number
  /** 4·S/P of one port. */
  readonly hydraulicDiameterM: number
  /** K of the ends, the walls and the bends. */
  readonly lossFactor: number
  /** Q of the friction along the walls, at the tuning. */
  readonly lossQ: number
  readonly tuningHz: number
  readonly airSpeedAtTuningMPerS?: number
  readonly airSpeedMPerS?: number
  readonly airSpeedHz?: number
  readonly withinLimit?: boolean
  readonly pipeResonanceHz: number
  readonly waveguideTuningHz: number
  /** Air inside all ports; walls come on top. */
  readonly airVolumeM3: number
  readonly otherEnds: { readonly model: EndModel; readonly lengthM: number; readonly tuningHz: number }
  readonly fits: boolean
  readonly why: readonly string[]
}

export interface PortWayOut {
  readonly change: (typeof wayOutChanges)[number]
  readonly detail: string
  readonly totalAreaM2?: number
  readonly airSpeedMPerS?: number
  readonly lengthM?: number
  readonly count?: number
  readonly netVolumeM3?: number
  readonly tuningHz?: number
  /** Of the power of the drive. */
  readonly powerShare?: number
  readonly radiatorAreaM2?: number
  readonly radiatorMassKg?: number
}

export interface PortSizing {
  readonly tuningHz: number
  readonly demand?: PortDemand
  readonly fits: boolean
  readonly recommended: PortDesign
  readonly candidates: readonly PortDesign[]
  readonly waysOut: readonly PortWayOut[]
}
