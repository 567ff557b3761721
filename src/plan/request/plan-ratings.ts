/** What a leaflet leaves out of the ratings of a driver: power and inductance, where the size of the cone or the coil bears a guess. */
import type { PlanDriver } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import { toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { pistonAreaM2 } from './plan-piston.ts'
import { usual } from './plan-usual.ts'

/**
 * P = p·Sd
 *
 * @source the power of an area is a low guess of this service: invented bass drivers of 8 to 15 inch in its tests bear 0.6 to 1.2 W/cm²
 * @check  Sd 490 cm² → 245 W, printed 250 W
 */
export function withRating(driver: PlanDriver, assumed: Assumptions): PlanDriver {
  const { sheet } = driver
  const areaM2 = pistonAreaM2(sheet)
  if (sheet.powerW !== undefined || areaM2 === undefined) return driver
  const { value, why } = usual.ratingWPerM2
  const powerW = assumed.or(undefined, 'driver.sheet.powerW', toDigits(areaM2 * value, 2), why)
  return { ...driver, sheet: { ...sheet, powerW } }
}

/**
 * Le = τ·Re, both of the connection that the sheet speaks of; none where it speaks of two.
 *
 * @source the time constant is common practice, no source
 * @check  Re 3.4 Ω → 1.7 mH
 */
export function withInductance(driver: PlanDriver, assumed: Assumptions): PlanDriver {
  const { sheet, coils } = driver
  const isOfOne = coils.resistanceStatedFor === undefined || coils.resistanceStatedFor === coils.statedFor
  if (sheet.leH !== undefined || sheet.reOhm === undefined || !isOfOne) return driver
  const { value, why } = usual.coilTimeS
  const leH = assumed.or(undefined, 'driver.sheet.leH', toDigits(sheet.reOhm * value, 2), why)
  return { ...driver, sheet: { ...sheet, leH } }
}

/** Said where the plan took a rating that the caller did not give. */
export function ratingCautions(given: PlanDriver, { sheet: { powerW } }: PlanDriver): readonly Caution[] {
  if (given.sheet.powerW !== undefined || powerW === undefined) return []
  return [caution('rating-assumed', say('rating-assumed', { powerW }), { at: 'driver.sheet', figures: { powerW } })]
}
