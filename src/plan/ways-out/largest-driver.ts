/** The largest usual driver for which the space holds a box. */
import type { PlanWaysOut } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { standsIn } from './stands-in.ts'

/** Usual sizes of bass drivers, flange, hole and depth; common practice, no source. */
export const usualDrivers = [
  { nominalM: 0.38, flangeDiameterM: 0.388, cutOutDiameterM: 0.352, mountingDepthM: 0.185 },
  { nominalM: 0.3, flangeDiameterM: 0.312, cutOutDiameterM: 0.282, mountingDepthM: 0.158 },
  { nominalM: 0.25, flangeDiameterM: 0.262, cutOutDiameterM: 0.232, mountingDepthM: 0.142 },
  { nominalM: 0.2, flangeDiameterM: 0.212, cutOutDiameterM: 0.182, mountingDepthM: 0.118 },
  { nominalM: 0.165, flangeDiameterM: 0.18, cutOutDiameterM: 0.146, mountingDepthM: 0.085 }
] as const

export function largestDriver(request: PlanRequest, driverCount = 1): PlanWaysOut['largestDriver'] {
  const found = usualDrivers.find(({ nominalM: _, ...mounting }) =>
    standsIn({ ...request, enclosure: {}, driverCount, driver: { ...request.driver, mounting } })
  )
  if (found === undefined) return undefined
  const { nominalM, flangeDiameterM, mountingDepthM } = found
  return { nominalM, flangeDiameterM, mountingDepthM }
}
