/** The same system in another state: with a warm coil, or without its filters; and the heat in its coils. */
import { chainGain } from '../../filter/filter-transfer.ts'
import { filteredSolver } from '../../network/filtered-solver.ts'
import { networkSolver } from '../../network/solver.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { solveGrid } from '../model/response-system.ts'

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

/** Mean heat in each coil [W] at a resistance of so many times the cold one. */
type HeatByRatio = (ratio: number) => number

/**
 * Mean heat in each coil for a programme with equal power in every octave of the grid.
 *
 *   P(k) = duty·k·Re/N · mean over ln f of |E·H/(Z + (k − 1)·Re)|²
 *
 * Z is what the cold drivers and all before them present to the source: the motion of the cone stands in it as an impedance of
 * its own, whatever the coil's resistance is.
 *
 * @param system  cold, with its filters
 * @validity coils that share one current, or equal ones
 * @source derived
 */
export function coilHeat(system: ResponseSystem, frequenciesHz: Float64Array, dutyFactor: number): HeatByRatio {
  const { current } = solveGrid(unfiltered(system), frequenciesHz)
  const { groupOhm, driverCount, voltageV } = system
  const squares = frequenciesHz.map(frequency => (chainGain(system.filters, frequency) * voltageV) ** 2)
  const size = current.re.map((re, k) => re * re + (current.im[k] as number) ** 2)
  const ohm = current.re.map((re, k) => re / (size[k] as number))
  const reactance = current.im.map((im, k) => -im / (size[k] as number))
  return ratio => {
    const more = (ratio - 1) * groupOhm
    let sum = 0
    for (let k = 0; k < ohm.length; k++) {
      sum += (squares[k] as number) / (((ohm[k] as number) + more) ** 2 + (reactance[k] as number) ** 2)
    }
    return (dutyFactor * ratio * groupOhm * sum) / (ohm.length * driverCount)
  }
}
