/** What always holds for the parameters of a driver. */
import type { Static } from 'typebox'
import type { DriverParametersRequest, DriverParametersResult } from '../../../contract/drivers/driver-parameters.ts'
import { difference, isNear, type Law } from '../../wire/law.ts'

export const driverLaws: readonly Law<Static<typeof DriverParametersRequest>, Static<typeof DriverParametersResult>>[] =
  [
    {
      id: 'completed-set-stays',
      sentence: 'A set that is complete, given again, stays as it is.',
      varied: ({ request, result }) => {
        const { vasAir: _, ...driver } = result.driver
        // What is derived beside what was printed may miss the bounds of a sheet; then there is nothing to give again.
        if (result.checks.length > 0 || result.slips.length > 0) return undefined
        return { driver, ...(request.air && { air: request.air }) }
      },
      broken: (
        {
          result: {
            driver: { vasAir: _, ...first }
          }
        },
        {
          result: {
            driver: { vasAir: __, ...second }
          }
        }
      ) => difference(first, second, 1e-3)
    },
    {
      id: 'total-q',
      sentence: 'Where nothing contradicts itself, the total Q is the electrical and the mechanical Q in parallel.',
      broken: ({ result: { driver, checks } }) => {
        const { qms, qes, qts } = driver
        return checks.length > 0 || isNear(qts, (qms * qes) / (qms + qes), 2e-5)
          ? undefined
          : `${qts} from ${qms} and ${qes}`
      }
    }
  ]
