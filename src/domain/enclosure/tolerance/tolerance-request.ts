/** A response, and how far its parts differ from what is printed, as one standard deviation each. */
import type { EnclosureToleranceRequest } from '../../../contract/enclosures/enclosure-tolerance.ts'
import type { EnclosureRequest } from '../model/request.ts'

export interface ToleranceRequest extends Omit<EnclosureToleranceRequest, 'enclosure'> {
  readonly enclosure: EnclosureRequest
}
