/** From a request to the network it describes, ready to be solved at any frequency. */
import { type Air, airOf } from '../../air/air.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { type Driver, driverOf } from '../../driver/driver.ts'
import type { FilterSection } from '../../filter/filter.ts'
import { filterSections } from '../../filter/filter-sections.ts'
import { filteredSolver } from '../../network/filtered-solver.ts'
import { emptySolution, type Solution } from '../../network/solution.ts'
import { type NetworkSolver, networkSolver } from '../../network/solver.ts'
import { say } from '../../say.ts'
import type { BuiltNetwork } from './built-network.ts'
import { customNetwork } from './custom-network.ts'
import { enclosureDefaults } from './defaults.ts'
import { type DriverWiring, driverWiring } from './driver-wiring.ts'
import { presetNetwork } from './preset-network.ts'
import { isHighPass } from './presets.ts'
import type { SystemRequest } from './request.ts'

/** Listening distance [m] of every level this service gives. */
export const DISTANCE_M = 1

export interface ResponseSystem extends BuiltNetwork {
  readonly air: Air
  readonly driver: Driver
  readonly wiring: DriverWiring
  readonly driverCount: number
  /** Drivers that share one current from terminal to terminal. */
  readonly driversInSeries: number
  /** Resistance of the driver group at rest [Ω]. */
  readonly groupOhm: number
  /** RMS before the series resistance [V]. */
  readonly voltageV: number
  readonly sourceOhm: number
  /** Parts carry the names of the caller. */
  readonly custom: boolean
  /** The level rises to a plateau; the others pass a band. */
  readonly highPass: boolean
  /** Before the amplifier; the solver's amplitudes are for one volt before them. */
  readonly filters: readonly FilterSection[]
  readonly solver: NetworkSolver
}

/** E = √(P·R): the voltage that a stated power means at a stated load. */
function voltageOf({ source }: SystemRequest, groupOhm: number, assume: Assumptions): number {
  const { voltageV, powerW, loadOhm } = source
  if (voltageV !== undefined && (powerW !== undefined || loadOhm !== undefined)) {
    throw new DesignError('conflicting-input', {
      field: powerW === undefined ? 'source.loadOhm' : 'source.powerW',
      detail: say('refused.give-voltagev-or-powerw-with-loadohm')
    })
  }
  if (voltageV !== undefined) return voltageV
  if (powerW === undefined) {
    throw new DesignError('missing-input', {
      field: 'source.voltageV',
      detail: say('refused.give-the-voltage-or-the-power')
    })
  }
  return Math.sqrt(powerW * assume.work(loadOhm, 'source.loadOhm', groupOhm, enclosureDefaults.groupOhm))
}

function built(request: SystemRequest, driver: Driver, wiring: DriverWiring, air: Air, assume: Assumptions) {
  const { enclosure, drivers } = request
  if (enclosure.kind !== 'custom') return presetNetwork(enclosure, driver, wiring, air, assume)
  if (drivers !== undefined) {
    const detail = say('refused.a-custom-enclosure-counts-and-joins')
    throw new DesignError('conflicting-input', { field: 'drivers', detail })
  }
  return customNetwork(enclosure, driver, air, assume)
}

/** A custom enclosure joins its drivers itself; their resistance at rest is what the network shows without motion. */
function customWiring({ network }: BuiltNetwork, driver: Driver): DriverWiring {
  const ohms = network.drivers.map(({ count, inSeries }) => (driver.coil.reOhm * inSeries ** 2) / count)
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  const count = sum(network.drivers.map(group => group.count))
  return {
    count,
    faces: count,
    inSeries: 1,
    groupInSeries: 1,
    groupOhm: network.connection === 'series' ? sum(ohms) : 1 / sum(ohms.map(ohm => 1 / ohm)),
    vasM3: driver.vasM3 * count
  }
}

/** @param assume  collects the defaults used */
export function responseSystem(request: SystemRequest, assume: Assumptions): ResponseSystem {
  const { enclosure } = request
  const air = airOf(request.air, assume)
  const driver = driverOf(request.driver, air, assume)
  const custom = enclosure.kind === 'custom'
  const wired = driverWiring(request.drivers, driver, custom ? assumptions() : assume)
  const parts = built(request, driver, wired, air, assume)
  const wiring = custom ? customWiring(parts, driver) : wired
  const filters = filterSections(request.filters ?? [], 'filters')
  const sourceOhm = assume.take(request.source.seriesOhm, 'source.seriesOhm', enclosureDefaults.seriesOhm)
  return {
    ...parts,
    air,
    driver,
    wiring,
    driverCount: wiring.count,
    driversInSeries: wiring.inSeries,
    groupOhm: wiring.groupOhm,
    voltageV: voltageOf(request, wiring.groupOhm, assume),
    sourceOhm,
    custom,
    highPass: enclosure.kind !== 'custom' && isHighPass(enclosure.kind),
    filters,
    solver: filteredSolver(networkSolver(parts.network, sourceOhm), filters)
  }
}

/** Solves at every frequency given; linear quantities for one volt of the source, before the filters, see {@link Solution}. */
export function solveGrid({ network, solver }: ResponseSystem, frequenciesHz: ArrayLike<number>): Solution {
  const omegas = new Float64Array(frequenciesHz.length)
  for (let k = 0; k < omegas.length; k++) omegas[k] = 2 * Math.PI * (frequenciesHz[k] as number)
  const solution = emptySolution(network, omegas)
  solver.solve(solution)
  return solution
}

/** Solves at one frequency again and again without new memory: the answer is overwritten by the next call. */
export function pointSolver({ network, solver }: ResponseSystem): (frequencyHz: number) => Solution {
  const solution = emptySolution(network, new Float64Array(1))
  return frequencyHz => {
    solution.omegas[0] = 2 * Math.PI * frequencyHz
    solver.solve(solution)
    return solution
  }
}
