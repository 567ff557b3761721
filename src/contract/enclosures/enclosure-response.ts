/** Request of a response. */
import Type, { type Static } from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { CabinBody } from '../acoustics/cabin.ts'
import { DriverBody } from '../drivers/driver.ts'
import { component, ref } from '../field/component.ts'
import type { Si } from '../field/wire-units.ts'
import { DriversBody, EnclosureBody, SourceBody } from './enclosure.ts'
import { filterChain } from './filter.ts'
import { frequenciesHz } from './frequencies.ts'
import { LimitsBody } from './limits.ts'
import { TimeResponseRequestBody } from './time-response.ts'

/** Everything that determines the network; of a response and of how far its parts may differ. */
export const systemFields = {
  driver: ref(DriverBody),
  drivers: Type.Optional(ref(DriversBody)),
  enclosure: ref(EnclosureBody),
  source: ref(SourceBody),
  air: Type.Optional(ref(AirBody)),
  filters: Type.Optional(filterChain),
  frequenciesHz: Type.Optional(frequenciesHz)
}

export const EnclosureResponseRequest = component(
  'EnclosureResponseRequest',
  'An enclosure, its drivers and what feeds them.',
  {
    ...systemFields,
    cabin: Type.Optional(ref(CabinBody)),
    limits: Type.Optional(ref(LimitsBody)),
    timeResponse: Type.Optional(ref(TimeResponseRequestBody))
  }
)
export interface EnclosureResponseRequest extends Si<Static<typeof EnclosureResponseRequest>> {}
