/** POST /v1/drivers/parameters */
import { DriverParametersRequest, DriverParametersResult } from '../../../contract/drivers/driver-parameters.ts'
import { completeDriverParameters as compute } from '../../../domain/driver/complete-driver-parameters.ts'
import { defineOperation } from '../../wire/operation.ts'
import { driverLaws } from './driver-laws.ts'

export const completeDriverParameters = defineOperation({
  path: '/v1/drivers/parameters',
  operationId: 'completeDriverParameters',
  tag: 'Drivers',
  summary: 'Complete and check the small-signal set of a driver',
  description:
    'Takes whatever a data sheet gives and works out the rest, each value marked given, derived or assumed. Relations the sheet over-determines are checked; what the rounding of the printed digits explains is not held against the sheet; a likely slip of unit, decimal place or line is named with the value it would mean and never applied. Coils can be moved between connections. Too little given is refused, a pointer to each figure that is missing.',
  body: DriverParametersRequest,
  result: DriverParametersResult,
  costMs: () => 0.6,
  laws: driverLaws,
  compute,
  examples: {
    fewFigures: {
      summary: 'The six figures most sheets print, two coils moved from series to parallel',
      request: {
        driver: {
          fsHz: 31,
          qms: 5.2,
          qes: 0.46,
          vasL: 52,
          sdCm2: 490,
          reOhm: 3.6,
          leMh: 2.1,
          xmaxMm: 14,
          powerW: 500,
          ratedImpedanceOhm: 4
        },
        coils: { count: 2, statedFor: 'series', wanted: 'parallel' }
      }
    },
    slip: {
      summary: 'A sheet whose Vas is in cubic feet',
      request: {
        driver: { fsHz: 31, qms: 5.2, qes: 0.46, qts: 0.423, vasL: 1.836, sdCm2: 490, reOhm: 3.6, mmsG: 172, leMh: 2.1 }
      }
    }
  }
})
