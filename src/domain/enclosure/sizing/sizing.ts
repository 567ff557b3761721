/** Request and result of sizing an enclosure; SI. */
import type { AlignmentId, SizedKind } from '../../../contract/enclosures/words.ts'
import type { SourceId } from '../../../contract/sources/source.ts'

/** What the network gives for a candidate, inductance and all stated losses in it. */
export interface CandidateResponse {
  readonly f3Hz?: number
  readonly f10Hz?: number
  readonly f3UpperHz?: number
  readonly rippleDb: number
  readonly peakDb: number
  readonly groupDelayAtF3S?: number
  /** Level re the plateau of the drivers in half space, at standard bass frequencies. */
  readonly levels: readonly { readonly frequencyHz: number; readonly relativeDb: number }[]
}

export interface RadiatorCandidate {
  readonly count: number
  readonly areaM2: number
  readonly complianceMPerN: number
  readonly massKg: number
  readonly resonanceHz: number
  readonly delta: number
  /** What one unit has to move one way, if the drivers are to use their excursion. */
  readonly excursionM?: number
}

export interface EnclosureCandidate {
  readonly kind: SizedKind
  readonly alignment: AlignmentId
  readonly name: string
  /** The first to look at of its kind. */
  readonly preferred: boolean
  readonly suits: boolean
  readonly why: readonly string[]
  readonly goodAt: string
  /** Acoustic volume; of the rear chamber where there are two. */
  readonly netVolumeM3: number
  readonly frontVolumeM3?: number
  /** Air volume to build where lining makes it appear larger. */
  readonly builtVolumeM3?: number
  readonly tuningHz?: number
  readonly frontTuningHz?: number
  readonly fcHz?: number
  readonly qtc?: number
  readonly alpha: number
  readonly tuningRatio?: number
  /** Half power by the closed form, without coil inductance. */
  readonly alignmentF3Hz?: number
  readonly response: CandidateResponse
  readonly passiveRadiators?: RadiatorCandidate
  readonly secondOpinion?: {
    readonly method: string
    readonly netVolumeM3: number
    readonly tuningHz: number
    readonly f3Hz: number
  }
  readonly space: { readonly roughOuterM3: number; readonly timesSmallest: number }
  readonly source: SourceId
}

export interface Unsuited {
  readonly kind: SizedKind
  readonly alignment?: AlignmentId
  readonly why: string
}
