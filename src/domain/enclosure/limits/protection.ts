/** The high-pass that keeps an unloaded cone within its excursion. */

import type { Protection } from '../../../contract/enclosures/large-signal.ts'
import { logarithmicGrid } from '../../../numeric/grid.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { atOneVolt } from '../response/response-at-one-volt.ts'
import { highPassLevel } from './formulas.ts'

const ORDERS = [2, 3, 4] as const
const LOWEST_HZ = 3
const POINTS = 160

/** The lowest frequency at which an opening still loads the cone; without one, where the closed air spring takes over. */
export function loadedFromHz({ chambers, driver }: ResponseSystem): number {
  const parts = Object.values(chambers)
  const opened = parts.filter(({ opening }) => opening !== undefined)
  const frequencies = (opened.length > 0 ? opened : parts).map(({ lossHz }) => lossHz)
  return frequencies.length === 0 ? driver.fsHz : Math.min(...frequencies)
}

/** No corner is sought below. */
const LOWEST_CORNER_HZ = 0.1

/**
 * Lowest corner of a Butterworth high-pass of the given order for which no excursion below the tuning passes the limit.
 *
 *   max over f < f_b of x(f)·|H(f; f_h)| = Xmax    f_h = max over f of f·((x/Xmax)² − 1)^(1/2n)
 *
 * @returns nothing where even a corner of four times the tuning does not hold the cone
 * @source derived from |H|² = 1/(1 + (f_h/f)²ⁿ)
 */
function lowestCorner(frequenciesHz: readonly number[], excursionM: readonly number[], order: number, xmaxM: number) {
  const top = frequenciesHz.at(-1) ?? 0
  let cornerHz = LOWEST_CORNER_HZ
  for (let k = 0; k < frequenciesHz.length; k++) {
    const over = ((excursionM[k] as number) / xmaxM) ** 2 - 1
    if (over > 0) cornerHz = Math.max(cornerHz, (frequenciesHz[k] as number) * over ** (1 / (2 * order)))
  }
  if (cornerHz > 4 * top) return []
  return [{ order, cornerHz, gainAtTuningDb: highPassLevel.of({ fh: cornerHz, fb: top, n: order }) }]
}

/**
 * Lowest second-order corner with which the passive radiators keep their travel: they go farthest about the tuning, where the
 * protection of the cone no longer looks.
 *
 * @param perVoltM  travel of one for a volt, filters in it
 * @returns none where no high-pass is needed
 * @source derived, as the corner of the cone
 */
export function radiatorCornerHz(
  frequenciesHz: ArrayLike<number>,
  perVoltM: readonly number[],
  voltageV: number,
  travelM: number
): number | undefined {
  const excursionM = perVoltM.map(each => each * voltageV)
  if (Math.max(...excursionM) <= travelM) return undefined
  return lowestCorner(Array.from(frequenciesHz), excursionM, 2, travelM)[0]?.cornerHz
}

/**
 * @param system  with the filters before it, at the drive in question
 * @validity linear suspension: the real cone is stiffer far out, so the corner is on the safe side
 * @source derived: from the solved excursion; corner of 0.7 to 0.9 times the tuning is common practice
 */
export function protectionOf(system: ResponseSystem, xmaxM: number): Protection {
  const belowHz = loadedFromHz(system)
  const frequenciesHz = logarithmicGrid(Math.min(LOWEST_HZ, belowHz / 4), belowHz, POINTS)
  const drive = atOneVolt(system, Float64Array.from(frequenciesHz))
  const excursions = drive.coneM.map(excursion => excursion * system.voltageV)
  const worst = excursions.reduce((best, excursion, k) => (excursion > (excursions[best] as number) ? k : best), 0)
  const excursionM = excursions[worst] as number
  const needed = excursionM > xmaxM
  return {
    belowHz,
    excursionM,
    excursionHz: frequenciesHz[worst] as number,
    needed,
    highPass: needed ? ORDERS.flatMap(order => lowestCorner(frequenciesHz, excursions, order, xmaxM)) : []
  }
}
