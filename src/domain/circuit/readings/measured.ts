/** One reading of a solved level: what to expect, and how far the meter may stray while all is as planned. */
import { drawnA } from '../points/element.ts'
import type { SolvedLevel } from './solved-level.ts'

/** What a meter can see. */
export interface Probe {
  /** Between two points [V]. */
  readonly between: (first: string, second: string) => number
  /** Through all parts of these names together, from first to second point [A]. */
  readonly through: (ids: readonly string[]) => number
}

interface Measured {
  readonly expected: number
  /** Roots of the sum of squares of all that lowers it and of all that raises it, and the meter. */
  readonly below: number
  readonly above: number
}

const probe = ({ elements, voltages }: Pick<SolvedLevel, 'elements' | 'voltages'>): Probe => {
  const at = (point: string) => voltages.get(point) ?? 0
  return {
    between: (first, second) => at(first) - at(second),
    through: ids =>
      elements
        .filter(({ id }) => ids.includes(id))
        .reduce((sum, { from, to, law }) => sum + drawnA(law, at(from) - at(to)), 0)
  }
}

/** What a hand meter adds: a share of the reading, and at least so much. Our choices. */
const meters = {
  V: { share: 0.005, least: 0.02 },
  mV: { share: 0.005, least: 0.002 },
  A: { share: 0.03, least: 1 },
  ohm: { share: 0.04, least: 0.0001 }
} as const

/**
 * @param read  what is measured, in SI
 * @check  two inputs that raise it by 30 mV and 40 mV: 50 mV above, and the meter
 */
export function measured(level: SolvedLevel, read: (see: Probe) => number, meter: keyof typeof meters): Measured {
  const expected = read(probe(level))
  const { share, least } = meters[meter]
  const shifts = level.moved.map(each => read(probe(each)) - expected)
  const rootOf = (sign: -1 | 1) => Math.hypot(...shifts.map(shift => Math.max(0, sign * shift)))
  const meterBand = share * Math.abs(expected) + least
  return { expected, below: rootOf(-1) + meterBand, above: rootOf(1) + meterBand }
}
