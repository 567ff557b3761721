/** From a request to the network it describes, ready to be solved at any frequency. */
import { type Air, airOf } from '../air/air.ts'
import type { Assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { type Driver, driverOf } from '../driver/driver.ts'
import { BEHIND, type Network, OUTSIDE, type Place } from '../network/network.ts'
import { emptySolution, type NetworkSolver, networkSolver, type Solution } from '../network/solver.ts'
import { type ChamberParts, chamberParts } from './chamber.ts'
import { isHighPass, type Preset, presets } from './presets.ts'
import { type ChamberName, chamberNames, type EnclosureRequest, type SystemRequest } from './request.ts'

/** Listening distance [m] of every level this service gives. */
export const DISTANCE_M = 1

export interface ResponseSystem {
  readonly air: Air
  readonly driver: Driver
  readonly driverCount: number
  readonly driversInSeries: number
  /** Resistance of the driver group at rest [Ω]. */
  readonly groupOhm: number
  /** RMS before the series resistance [V]. */
  readonly voltageV: number
  readonly sourceOhm: number
  readonly highPass: boolean
  readonly chambers: Readonly<Partial<Record<ChamberName, ChamberParts>>>
  readonly network: Network
  readonly solver: NetworkSolver
}

function driversOf({ drivers }: SystemRequest, assume: Assumptions) {
  const count = assume.or(drivers?.count, 'drivers.count', 1, 'a single driver')
  const inSeries = assume.or(drivers?.inSeries, 'drivers.inSeries', 1, 'all drivers in parallel')
  if (count % inSeries !== 0) {
    throw new DesignError('conflicting-input', {
      field: 'drivers.inSeries',
      value: inSeries,
      detail: `${count} drivers cannot be split into strings of ${inSeries}.`
    })
  }
  return { count, inSeries }
}

/** E = √(P·R): the voltage that a stated power means at a stated load. */
function voltageOf({ source }: SystemRequest, groupOhm: number, assume: Assumptions): number {
  const { voltageV, powerW, loadOhm } = source
  if (voltageV !== undefined && (powerW !== undefined || loadOhm !== undefined)) {
    throw new DesignError('conflicting-input', {
      field: powerW === undefined ? 'source.loadOhm' : 'source.powerW',
      detail: 'A voltage needs neither power nor load beside it.'
    })
  }
  if (voltageV !== undefined) return voltageV
  if (powerW === undefined) {
    throw new DesignError('missing-input', { field: 'source.voltageV', detail: 'Give the voltage or the power.' })
  }
  return Math.sqrt(
    powerW * assume.or(loadOhm, 'source.loadOhm', groupOhm, 'the DC resistance of the drivers as they are joined')
  )
}

/** @throws DesignError `missing-input` or `conflicting-input` where the chambers do not fit the kind */
function checkShape(enclosure: EnclosureRequest, preset: Preset): void {
  for (const name of chamberNames) {
    const needed = preset.front === name || preset.rear === name
    const chamber = enclosure[name]
    const field = `enclosure.${name}`
    if (needed && chamber === undefined) {
      throw new DesignError('missing-input', { field, detail: `A ${enclosure.kind} enclosure has a ${name} chamber.` })
    }
    const openings = [chamber?.port, chamber?.passiveRadiators].filter(opening => opening !== undefined).length
    if (preset.openings[name] !== undefined && openings !== 1) {
      throw new DesignError(openings === 0 ? 'missing-input' : 'conflicting-input', {
        field: `${field}.port`,
        detail: `The ${name} chamber of a ${enclosure.kind} enclosure needs either ports or passive radiators.`
      })
    }
  }
}

/** @param assume  collects the defaults used */
export function responseSystem(request: SystemRequest, assume: Assumptions): ResponseSystem {
  const { enclosure } = request
  const air = airOf(request.air, assume)
  const driver = driverOf(request.driver, air)
  const { count, inSeries } = driversOf(request, assume)
  const preset = presets[enclosure.kind]
  checkShape(enclosure, preset)
  const present = chamberNames.filter(name => enclosure[name] !== undefined)
  const place = (name: string | undefined): Place =>
    name === 'behind' ? BEHIND : name === 'outside' ? OUTSIDE : present.indexOf(name as ChamberName)
  const parts = present.map((name, node) => {
    const chamber = enclosure[name] as NonNullable<EnclosureRequest[ChamberName]>
    const closedHz = driver.fsHz * Math.sqrt(1 + (count * driver.vasM3) / chamber.netVolumeM3)
    const opensTo = place(preset.openings[name])
    return chamberParts(chamber, air, assume, { node, opensTo, closedHz, at: `enclosure.${name}` })
  })
  const network: Network = {
    chambers: parts.map(part => part.chamber),
    branches: parts.flatMap(({ opening, leak }) => [opening, leak].filter(branch => branch !== undefined)),
    drivers: [{ front: place(preset.front), rear: place(preset.rear), driver, count, inSeries }]
  }
  const groupOhm = (driver.coil.reOhm * inSeries ** 2) / count
  const sourceOhm = assume.or(request.source.seriesOhm, 'source.seriesOhm', 0, 'cable and amplifier without resistance')
  return {
    air,
    driver,
    driverCount: count,
    driversInSeries: inSeries,
    groupOhm,
    voltageV: voltageOf(request, groupOhm, assume),
    sourceOhm,
    highPass: isHighPass(enclosure.kind),
    chambers: Object.fromEntries(present.map((name, index) => [name, parts[index]])),
    network,
    solver: networkSolver(network, sourceOhm)
  }
}

/** Solves at every frequency given; linear quantities for one volt of the source, see {@link Solution}. */
export function solveGrid({ network, solver }: ResponseSystem, frequenciesHz: ArrayLike<number>): Solution {
  const solution = emptySolution(
    network,
    Float64Array.from(frequenciesHz, frequency => 2 * Math.PI * frequency)
  )
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
