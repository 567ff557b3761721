/** What a response is asked for: an enclosure around drivers, the source that feeds them, the air, the frequencies. */
import type { ChamberRequest, CustomEnclosureRequest } from '../../../contract/enclosures/enclosure.ts'
import type { EnclosureResponseRequest } from '../../../contract/enclosures/enclosure-response.ts'
import type { PresetKind } from '../../../contract/enclosures/words.ts'

/** The kinds of the contract as code sees them that walks over chambers, whichever the kind has. */
export interface PresetEnclosureRequest {
  readonly kind: PresetKind
  readonly rear?: ChamberRequest
  readonly front?: ChamberRequest
}

export type EnclosureRequest = PresetEnclosureRequest | CustomEnclosureRequest

export interface ResponseRequest extends Omit<EnclosureResponseRequest, 'enclosure'> {
  readonly enclosure: EnclosureRequest
}

/** Everything that determines the network. */
export type SystemRequest = Pick<ResponseRequest, 'driver' | 'drivers' | 'enclosure' | 'source' | 'air' | 'filters'>
