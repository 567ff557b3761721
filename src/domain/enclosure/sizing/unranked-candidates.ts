/** A candidate before it is compared with the others. */
import type { EnclosureCandidate, Unsuited } from '../../../contract/enclosures/enclosure-sizing.ts'
import type { Reason } from './suitability.ts'

export type UnrankedCandidate = Omit<EnclosureCandidate, 'preferred' | 'suits' | 'why' | 'space' | 'builtVolumeM3'> & {
  readonly reasons: readonly Reason[]
  /** Rear and front together. */
  readonly totalVolumeM3: number
  /** The lowest of its kind is looked at first. */
  readonly rank: number
}

export interface CandidateFamilies {
  readonly candidates: readonly UnrankedCandidate[]
  readonly unsuited: readonly Unsuited[]
}
