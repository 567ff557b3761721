/** Travel of a driver whose sheet gives none: without it nothing would hold the cone. */
import type { PlanDriver } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { toMm } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { planDefaults } from './defaults.ts'
import { pistonDiameterM } from './plan-piston.ts'
import { withGuess } from './plan-ratings.ts'

/**
 * x = d·share, d the diameter of the piston
 *
 * @source the share is a low guess of this service; the piston of a nominal diameter common practice, no source
 * @check  Sd 490 cm² → d 249.8 mm → 5.0 mm
 */
export const withTravel = (driver: PlanDriver, assumed: Assumptions): PlanDriver =>
  withGuess(driver, 'xmaxM', pistonDiameterM(driver.sheet), planDefaults.travelShare, assumed)

/** Said where the plan took a travel that the caller did not give. */
export function travelCautions(given: PlanDriver, { sheet: { xmaxM } }: PlanDriver): readonly Caution[] {
  if (given.sheet.xmaxM !== undefined || xmaxM === undefined) return []
  const xmaxMm = toMm(xmaxM, 1)
  return [caution('travel-assumed', say('travel-assumed', { xmaxMm }), { at: 'driver.sheet', figures: { xmaxMm } })]
}
