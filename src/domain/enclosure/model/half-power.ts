/** Where a response rises through half power, and where a pass band falls through it, each found between turning points. */
import { logarithmicGrid } from '../../../numeric/grid.ts'
import { present } from '../../present.ts'
import { crossings, type Extreme, extremes, pressureQuantity, type Scan } from './extremes.ts'
import { plateauPressure, pressureScale } from './plateau.ts'
import { pointSolver, type ResponseSystem, solveGrid } from './response-system.ts'

/** Pressure at half power over that of the reference. */
export const HALF_POWER = Math.SQRT1_2

/** Where a pass band is looked for. */
const BAND = { fromHz: 3, toHz: 600 } as const

type Peak = Pick<Extreme, 'frequencyHz' | 'modulus'>

interface HalfPower {
  /** Absent where the response never rises through half power. */
  readonly f3Hz?: number
  readonly f3UpperHz?: number
  readonly upward: number
  readonly downward: number
  /** Highest pressure of the band, over ω·|U|. */
  readonly peak: Peak
  /** What half power is half of: the plateau, or of a pass band its peak. */
  readonly reference: number
}

const isInBand = ({ frequencyHz }: Pick<Extreme, 'frequencyHz'>) =>
  frequencyHz >= BAND.fromHz && frequencyHz <= BAND.toHz

function highest({ at }: Scan, turning: readonly Extreme[]): Peak {
  const ends = [BAND.fromHz, BAND.toHz].map(frequencyHz => ({
    frequencyHz,
    modulus: pressureQuantity.modulus(at(frequencyHz), 0)
  }))
  return [...ends, ...turning.filter(isInBand)].reduce((best, here) => (here.modulus > best.modulus ? here : best))
}

/**
 * Lowest upward and, for a pass band, highest downward crossing of half power.
 *
 * @param scan  dense enough that every feature of a loudspeaker shows a change of slope
 * @param turning  extremes of the pressure on it
 * @validity between two neighbours of scan and extremes the pressure is monotonic, so no crossing is missed
 * @check  closed box of Qtc 1 → f3/fc 0.786151
 */
export function halfPower(system: ResponseSystem, scan: Scan, turning: readonly Extreme[]): HalfPower {
  const peak = highest(scan, turning)
  const reference = system.highPass ? plateauPressure(system) / pressureScale(system) : peak.modulus
  const passes = crossings(scan, pressureQuantity, turning, reference * HALF_POWER)
  const [up, down] = [true, false].map(upward =>
    passes.filter(pass => pass.upward === upward && (system.highPass || isInBand(pass)))
  )
  return {
    ...present({ f3Hz: up?.[0]?.frequencyHz, f3UpperHz: system.highPass ? undefined : down?.at(-1)?.frequencyHz }),
    upward: up?.length ?? 0,
    downward: down?.length ?? 0,
    peak,
    reference
  }
}

const quickHz = logarithmicGrid(BAND.fromHz, BAND.toHz, 128)

/** The same on a scan of the band alone, for one of many like systems. */
export function quickHalfPower(system: ResponseSystem): HalfPower {
  const scan = { frequenciesHz: quickHz, solution: solveGrid(system, quickHz), at: pointSolver(system) }
  return halfPower(system, scan, extremes(scan, pressureQuantity))
}
