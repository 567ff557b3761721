/** Half-power frequencies of one of many similar systems: a coarse scan, then the crossing itself. */
import { bracketedRoot } from '../../../numeric/bracketed-root.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { Solution } from '../../network/solution.ts'
import { type PointSolver, pressureQuantity } from './extremes.ts'
import { plateauPressure, pressureScale } from './plateau.ts'
import { pointSolver, type ResponseSystem, solveGrid } from './response-system.ts'

const grid = Float64Array.from(logarithmicGrid(3, 600, 128))

/** Pressure at half power over that of the reference. */
export const HALF_POWER = Math.SQRT1_2

/** Relative width at which a crossing is found: far below every printed digit. */
const TOLERANCE = 1e-9

interface HalfPower {
  /** Absent where the response never rises through half power. */
  readonly f3Hz?: number
  readonly f3UpperHz?: number
}

/** Points this near to the highest one may lie beside a higher peak. */
const CONTENDER = 0.8

/** Highest pressure: every peak between neighbours of the scan that may be it, refined on its slope. */
function peakModulus(solution: Solution, moduli: Float64Array, at: PointSolver): number {
  const slope = (frequencyHz: number) => pressureQuantity.slope(at(frequencyHz), 0)
  const highest = moduli.reduce((most, value) => Math.max(most, value), 0)
  let best = highest
  for (let k = 0; k + 1 < grid.length; k++) {
    if (Math.max(moduli[k] as number, moduli[k + 1] as number) < CONTENDER * highest) continue
    const [rise, fall] = [pressureQuantity.slope(solution, k), pressureQuantity.slope(solution, k + 1)]
    if (!(rise > 0 && fall < 0)) continue
    const peakHz = bracketedRoot(slope, grid[k] as number, grid[k + 1] as number, rise, fall, TOLERANCE)
    best = Math.max(best, pressureQuantity.modulus(at(peakHz), 0))
  }
  return best
}

/**
 * Lowest upward and, for a pass band, highest downward crossing of half power between 3 and 600 Hz.
 *
 * @validity responses without a second crossing closer than 4 % to the first
 */
export function halfPower(system: ResponseSystem): HalfPower {
  const solution = solveGrid(system, grid)
  const at = pointSolver(system)
  const moduli = grid.map((_, k) => pressureQuantity.modulus(solution, k))
  const modulus = (frequencyHz: number) => pressureQuantity.modulus(at(frequencyHz), 0)
  const reference = system.highPass
    ? plateauPressure(system) / pressureScale(system)
    : peakModulus(solution, moduli, at)
  const gaps = moduli.map(value => Math.log((value + Number.MIN_VALUE) / (reference * HALF_POWER)))
  const crossing = (k: number) =>
    bracketedRoot(
      frequencyHz => Math.log((modulus(frequencyHz) + Number.MIN_VALUE) / (reference * HALF_POWER)),
      grid[k] as number,
      grid[k + 1] as number,
      gaps[k] as number,
      gaps[k + 1] as number,
      TOLERANCE
    )
  const upward = gaps.findIndex((gap, k) => gap < 0 && (gaps[k + 1] ?? gap) >= 0)
  const downward = system.highPass ? -1 : gaps.findLastIndex((gap, k) => gap >= 0 && (gaps[k + 1] ?? gap) < 0)
  return {
    ...(upward < 0 ? {} : { f3Hz: crossing(upward) }),
    ...(downward < 0 ? {} : { f3UpperHz: crossing(downward) })
  }
}
