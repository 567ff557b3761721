/** One reading of a solved level: what to expect, and how far the meter may stray while all is as planned. */
import { drawnA } from '../points/element.ts'
import { readingJudgement } from './reading-judgement.ts'
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
  /** Root of the sum of squares of all that is in doubt, and the meter. */
  readonly band: number
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

/**
 * @param read  what is measured, in SI
 * @check  two inputs that move it by 30 mV and 40 mV: 50 mV, and the meter
 */
export function measured(
  level: SolvedLevel,
  read: (see: Probe) => number,
  meter: keyof typeof readingJudgement.meter
): Measured {
  const expected = read(probe(level))
  const { share, least } = readingJudgement.meter[meter]
  const squares = level.moved.reduce((sum, each) => sum + (read(probe(each)) - expected) ** 2, 0)
  return { expected, band: Math.sqrt(squares) + share * Math.abs(expected) + least }
}
