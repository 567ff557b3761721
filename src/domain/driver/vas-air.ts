/** The air that a stated Vas belongs to. Cms is the driver's own; the volume of air that is as compliant changes with pressure. */
import { type Air, standardAir } from '../air/air.ts'
import type { Assumptions } from '../assume.ts'

export const vasAirs = ['reference', 'request'] as const
export type VasAir = (typeof vasAirs)[number]

/** Below this share of ρc² the choice moves no figure that a sheet prints. */
const NOTICEABLE = 1e-3

/**
 * Dry air at 20 °C and 101 325 Pa unless the request says that its own air is meant: a sheet is not rewritten for the place
 * where a box is built.
 */
export function airOfVas(vasAir: VasAir | undefined, air: Air, assume: Assumptions): Air {
  if (vasAir === 'request') return air
  if (Math.abs(air.stiffnessPa / standardAir.stiffnessPa - 1) > NOTICEABLE) {
    const why =
      'a sheet states Vas for air at sea level (20 °C, 101 325 Pa); Cms follows from it and holds at any height'
    assume.or(vasAir, 'driver.vasAir', 'reference', why)
  }
  return standardAir
}
