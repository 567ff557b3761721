/** The air that a stated Vas belongs to. Cms is the driver's own; the volume of air that is as compliant changes with pressure. */

import type { VasAir } from '../../contract/drivers/words.ts'
import { type Air, standardAir } from '../air/air.ts'
import type { Assumptions } from '../assume.ts'
import { driverRules } from './sheet/defaults.ts'

/** Below this share of ρc² the choice moves no figure that a sheet prints. */
const NOTICEABLE = 1e-3

/**
 * A sheet is not rewritten for the place where a box is built: Vas belongs to dry air at 20 °C and 101 325 Pa. Who states the
 * constants of the air instead of its temperature and pressure states a calculation whole, Vas included.
 */
export function airOfVas(vasAir: VasAir | undefined, air: Air, assume: Assumptions): Air {
  if (vasAir !== undefined) return vasAir === 'request' ? air : standardAir
  if (Math.abs(air.stiffnessPa / standardAir.stiffnessPa - 1) <= NOTICEABLE) return air.stated ? air : standardAir
  if (air.stated) {
    assume.note('driver.vasAir', 'request', driverRules.vasOfStatedAir)
    return air
  }
  assume.note('driver.vasAir', 'reference', driverRules.vasOfSheet)
  return standardAir
}
