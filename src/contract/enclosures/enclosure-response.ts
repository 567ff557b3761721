/** Request of a response. */
import Type from 'typebox'
import { AirBody } from '../acoustics/air.ts'
import { CabinBody } from '../acoustics/cabin.ts'
import { DriverBody } from '../drivers/driver.ts'
import { component, ref } from '../field/component.ts'
import { DriversBody, EnclosureBody, SourceBody } from './enclosure.ts'
import { filterChain } from './filter.ts'
import { frequenciesHz } from './frequencies.ts'
import { LimitsBody } from './limits.ts'
import { TimeResponseRequestBody } from './time-response.ts'

export const EnclosureResponseRequest = component(
  'EnclosureResponseRequest',
  'An enclosure, its drivers and what feeds them.',
  {
    driver: ref(DriverBody),
    drivers: Type.Optional(ref(DriversBody)),
    enclosure: ref(EnclosureBody),
    source: ref(SourceBody),
    air: Type.Optional(ref(AirBody)),
    filters: Type.Optional(filterChain),
    frequenciesHz: Type.Optional(frequenciesHz),
    cabin: Type.Optional(ref(CabinBody)),
    limits: Type.Optional(ref(LimitsBody)),
    timeResponse: Type.Optional(ref(TimeResponseRequestBody))
  }
)
