/** The largest usual driver for which the space holds a box. */
import type { PlanWaysOut } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { wayOutDefaults } from './defaults.ts'
import { standsIn } from './stands-in.ts'

export function largestDriver(request: PlanRequest, driverCount = 1): PlanWaysOut['largestDriver'] {
  const found = wayOutDefaults.usualDrivers.value.find(({ nominalM: _, ...mounting }) =>
    standsIn({ ...request, enclosure: {}, driverCount, driver: { ...request.driver, mounting } })
  )
  if (found === undefined) return undefined
  const { nominalM, flangeDiameterM, mountingDepthM } = found
  return { nominalM, flangeDiameterM, mountingDepthM }
}
