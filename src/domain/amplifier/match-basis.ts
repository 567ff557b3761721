/** How the chief figures of a match were reached. */
import type { MatchOption } from '../../contract/amplifiers/amplifier-matching.ts'
import type { Basis } from '../../contract/field/envelope.ts'
import { wiredLoad } from '../coils/formulas.ts'
import { explain } from '../formula.ts'
import { matchedVoltage, powerAtSameVoltage, powerRatio, targetVoltage } from './formulas.ts'
import type { GainTarget } from './gain-target.ts'
import type { CoilRating } from './match-options.ts'

/** A wired load is that of one coil, times the square of those in series, over all of them. */
function loadBasis({ coilOhm: Zc, coils }: CoilRating, { loadOhm, driversPerOutput }: MatchOption): Basis {
  const n = driversPerOutput * coils
  return explain(wiredLoad, 'best.loadOhm', loadOhm, { Zc, s: Math.round(Math.sqrt((loadOhm / Zc) * n)), n })
}

/** V²/Z with the voltage of the rating. */
function boundBasis(best: MatchOption): readonly Basis[] {
  const { powerFrom, claimedPowerW, outputPowerW = 0, ratedOhm: Zr = 0, ratedPowerW: Pr = 0, loadOhm: Z } = best
  if (powerFrom !== 'voltage-bound' || claimedPowerW !== undefined) return []
  return [explain(powerAtSameVoltage, 'best.outputPowerW', outputPowerW, { Pr, Zr, Z })]
}

export function matchBasis(
  driver: CoilRating,
  best: MatchOption | undefined,
  gain: GainTarget | undefined
): readonly Basis[] {
  if (best?.powerRatio === undefined || best.outputPowerW === undefined || gain === undefined) return []
  const powers = { Pa: best.outputPowerW, N: best.driversPerOutput, Pd: driver.powerW }
  return [
    ...boundBasis(best),
    loadBasis(driver, best),
    explain(powerRatio, 'best.powerRatio', best.powerRatio, powers),
    gain.limitedBy === 'asked'
      ? explain(targetVoltage, 'gain.targetVoltageV', gain.targetVoltageV, { P: gain.powerW, Z: best.loadOhm })
      : explain(matchedVoltage, 'gain.targetVoltageV', gain.targetVoltageV, { ...powers, Z: best.loadOhm })
  ]
}
