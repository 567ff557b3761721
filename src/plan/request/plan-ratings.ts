/** What a leaflet leaves out of the ratings of a driver: power and inductance, where the size of the cone or the coil bears a guess. */
import type { PlanDriver } from '../../contract/systems/plan-request.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { type Caution, caution } from '../../domain/caution.ts'
import type { Default } from '../../domain/default.ts'
import { toDigits } from '../../domain/digits.ts'
import { say } from '../../domain/say.ts'
import { planDefaults } from './defaults.ts'
import { pistonAreaM2 } from './plan-piston.ts'

/** What a sheet leaves out, worked out from a size it gives and noted; as it was where it is given, or where nothing bears a guess. */
export function withGuess(
  driver: PlanDriver,
  field: 'powerW' | 'leH' | 'xmaxM',
  size: number | undefined,
  share: Default<number>,
  assumed: Assumptions
): PlanDriver {
  const { sheet } = driver
  if (sheet[field] !== undefined || size === undefined) return driver
  const guess = assumed.work(undefined, `driver.sheet.${field}`, toDigits(size * share.value, 2), share)
  return { ...driver, sheet: { ...sheet, [field]: guess } }
}

/**
 * P = p·Sd
 *
 * @source the power of an area is a low guess of this service: invented bass drivers of 8 to 15 inch in its tests bear 0.6 to 1.2 W/cm²
 * @check  Sd 490 cm² → 245 W, printed 250 W
 */
export const withRating = (driver: PlanDriver, assumed: Assumptions): PlanDriver =>
  withGuess(driver, 'powerW', pistonAreaM2(driver.sheet), planDefaults.ratingWPerM2, assumed)

/**
 * Le = τ·Re, both of the connection that the sheet speaks of; none where it speaks of two.
 *
 * @source the time constant is common practice, no source
 * @check  Re 3.4 Ω → 1.7 mH
 */
export function withInductance(driver: PlanDriver, assumed: Assumptions): PlanDriver {
  const { sheet, coils } = driver
  const isOfOne = coils.resistanceStatedFor === undefined || coils.resistanceStatedFor === coils.statedFor
  return withGuess(driver, 'leH', isOfOne ? sheet.reOhm : undefined, planDefaults.coilTimeS, assumed)
}

/** Said where the plan took a rating that the caller did not give. */
export function ratingCautions(given: PlanDriver, { sheet: { powerW } }: PlanDriver): readonly Caution[] {
  if (given.sheet.powerW !== undefined || powerW === undefined) return []
  return [caution('rating-assumed', say('rating-assumed', { powerW }), { at: 'driver.sheet', figures: { powerW } })]
}
