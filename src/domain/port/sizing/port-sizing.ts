import type { RoundPortWish, SlotPortWish } from '../../../contract/ports/port-sizing.ts'
import type { EndModel, wayOutChanges } from '../../../contract/ports/words.ts'
export type PortWish = RoundPortWish | SlotPortWish

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
