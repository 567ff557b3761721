/** The same system in another state: with a warm coil, or without its filters; and the heat in its coils. */
import { filteredSolver } from '../network/filtered-solver.ts'
import type { Solution } from '../network/solution.ts'
import { networkSolver } from '../network/solver.ts'
import type { ResponseSystem } from './response-system.ts'
import { solveGrid } from './response-system.ts'

/** @param ratio  resistance of the coil over that at 20 °C */
export function hotSystem(system: ResponseSystem, ratio: number): ResponseSystem {
  const warm = { ...system.driver, coil: { ...system.driver.coil, reOhm: system.driver.coil.reOhm * ratio } }
  const drivers = system.network.drivers.map(group => ({
    ...group,
    driver: { ...group.driver, coil: { ...group.driver.coil, reOhm: group.driver.coil.reOhm * ratio } }
  }))
  const network = { ...system.network, drivers }
  return {
    ...system,
    driver: warm,
    groupOhm: system.groupOhm * ratio,
    network,
    solver: filteredSolver(networkSolver(network, system.sourceOhm), system.filters)
  }
}

/** The same system as the amplifier sees it, without the filters before that. */
export function unfiltered(system: ResponseSystem): ResponseSystem {
  if (system.filters.length === 0) return system
  return { ...system, filters: [], solver: networkSolver(system.network, system.sourceOhm) }
}

/** Mean square of the current over a grid that is even in the logarithm of the frequency [A²]. */
function meanSquareCurrent({ current: { re, im } }: Solution): number {
  let sum = 0
  for (let k = 0; k < re.length; k++) sum += (re[k] as number) ** 2 + (im[k] as number) ** 2
  return sum / Math.max(1, re.length)
}

/**
 * Mean heat in each coil for a programme with equal power in every octave of the grid.
 *
 *   P = duty·(E·i₁)²·Re/N, averaged over ln f
 *
 * @param system  with the filters before it and the coil as warm as it is
 * @source derived
 */
export function coilHeatW(system: ResponseSystem, frequenciesHz: Float64Array, dutyFactor: number): number {
  const square = meanSquareCurrent(solveGrid(system, frequenciesHz)) * system.voltageV ** 2
  return (dutyFactor * square * system.groupOhm) / system.driverCount
}
