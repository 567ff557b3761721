/** Passive radiators in free air and on the air of a box. */
import { radiatorTuning } from './formulas.ts'

/** One unit, what is added to it in its mass. */
interface MovingUnit {
  readonly massKg: number
  readonly complianceMPerN: number
}

interface RadiatorSet extends MovingUnit {
  readonly count: number
  /** Of one unit. */
  readonly areaM2: number
}

/**
 * Resonance of one unit in free air.
 *
 *   fp = 1/(2π·√(m·C))
 *
 * @param unit  mass and compliance above 0
 * @source derived: a mass on a spring
 * @check  300 g on 1 mm/N → 9.18881 Hz, by hand
 */
export const radiatorResonanceHz = ({ massKg, complianceMPerN }: MovingUnit): number =>
  1 / (2 * Math.PI * Math.sqrt(massKg * complianceMPerN))

/** Resonance of one unit, the air as compliant as all of them, and what the box with them is tuned to. */
export function tunedRadiators(set: RadiatorSet, volumeM3: number, stiffnessPa: number) {
  const { count, areaM2, complianceMPerN } = set
  const resonanceHz = radiatorResonanceHz(set)
  const vasM3 = count * stiffnessPa * areaM2 ** 2 * complianceMPerN
  return { resonanceHz, vasM3, tuningHz: radiatorTuning.of({ fp: resonanceHz, Vap: vasM3, V: volumeM3 }) }
}
