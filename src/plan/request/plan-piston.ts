/** The piston of a driver, from its area or its nominal diameter. */
import type { PlanDriver } from '../../contract/systems/plan-request.ts'
import { driverDefaults } from '../../domain/driver/sheet/defaults.ts'

type Sheet = Pick<PlanDriver['sheet'], 'sdM2' | 'nominalDiameterM'>

/** @returns area of one cone; none where the sheet tells neither */
export function pistonAreaM2({ sdM2, nominalDiameterM }: Sheet): number | undefined {
  if (sdM2 !== undefined || nominalDiameterM === undefined) return sdM2
  return (Math.PI / 4) * (driverDefaults.pistonDiameterShare.value * nominalDiameterM) ** 2
}

/** @returns diameter of the circle of that area */
export function pistonDiameterM(sheet: Sheet): number | undefined {
  const areaM2 = pistonAreaM2(sheet)
  return areaM2 === undefined ? undefined : Math.sqrt((4 * areaM2) / Math.PI)
}
