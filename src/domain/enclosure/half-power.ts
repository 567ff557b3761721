/** Half-power frequencies of one of many similar systems: a coarse scan, then the crossing itself. */
import { bracketedRoot } from '../../numeric/bracketed-root.ts'
import { logarithmicGrid } from '../../numeric/grid.ts'
import { pressureQuantity } from './extremes.ts'
import { pointSolver, type ResponseSystem, solveGrid } from './response-system.ts'
import { plateauPressure, pressureScale } from './scalars.ts'

const grid = Float64Array.from(logarithmicGrid(3, 600, 128))

/** Relative width at which a crossing is found: far below every printed digit. */
const TOLERANCE = 1e-9

export interface HalfPower {
  /** Absent where the response never rises through half power. */
  readonly f3Hz?: number
  readonly f3UpperHz?: number
}

/** Highest pressure, refined where the slope changes its sign beside the highest point. */
function peakModulus(
  moduli: Float64Array,
  slope: (frequencyHz: number) => number,
  modulus: (frequencyHz: number) => number
) {
  const best = moduli.reduce((at, value, k) => (value > (moduli[at] as number) ? k : at), 0)
  const low = grid[Math.max(0, best - 1)] as number
  const high = grid[Math.min(grid.length - 1, best + 1)] as number
  const [rise, fall] = [slope(low), slope(high)]
  if (!(rise > 0 && fall < 0)) return moduli[best] as number
  return modulus(bracketedRoot(slope, low, high, rise, fall))
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
    : peakModulus(moduli, frequencyHz => pressureQuantity.slope(at(frequencyHz), 0), modulus)
  const gaps = moduli.map(value => Math.log((value + Number.MIN_VALUE) / (reference * Math.SQRT1_2)))
  const crossing = (k: number) =>
    bracketedRoot(
      frequencyHz => Math.log((modulus(frequencyHz) + Number.MIN_VALUE) / (reference * Math.SQRT1_2)),
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
