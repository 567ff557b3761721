/** Which state of the time equations is which. */
import type { FilterSection } from '../filter/filter.ts'
import { type CoilCircuit, coilCircuit } from './coil-circuit.ts'
import { type GroupTotals, groupTotals } from './driver-columns.ts'
import type { Branch, Network } from './network.ts'
import { hasSharedCurrent } from './solution.ts'

/** Groups that carry one current, and the coil they make together. */
export interface Loop {
  readonly groups: readonly number[]
  readonly coil: CoilCircuit
  /** State of the current where there is a plain inductance, or −1. */
  readonly current: number
  /** First of the states of the cells. */
  readonly cells: number
}

/** A port or radiator: flow, and for radiators the volume displaced (else −1). */
interface MovingBranch {
  readonly branch: Branch
  readonly flow: number
  readonly volume: number
}

export interface StateLayout {
  readonly network: Network
  readonly sourceOhm: number
  readonly filters: readonly FilterSection[]
  /** First state of each filter section. */
  readonly sections: readonly number[]
  readonly totals: readonly GroupTotals[]
  readonly loops: readonly Loop[]
  /** Velocity of each group; its displacement is the next state. */
  readonly cones: readonly number[]
  readonly moving: readonly MovingBranch[]
  readonly leaks: readonly Branch[]
  /** Charge of the first chamber; the others follow. */
  readonly charges: number
  /** √ of twice the energy of a unit of each state, so that scaled states are of a size. */
  readonly weights: readonly number[]
  readonly order: number
}

function loopsOf(network: Network, totals: readonly GroupTotals[], claim: Claim): readonly Loop[] {
  const all = network.drivers.map((_, index) => index)
  const together = hasSharedCurrent(network) ? [all] : all.map(index => [index])
  return together.map(groups => {
    const scale = groups.reduce((sum, group) => sum + (totals[group] as GroupTotals).coilScale, 0)
    const driver = network.drivers[groups[0] as number]?.driver
    if (driver === undefined) throw new RangeError('a loop without driver')
    const coil = coilCircuit(driver.coil, scale)
    const current = coil.inductanceH > 0 ? claim(Math.sqrt(coil.inductanceH)) : -1
    const cells = claim(...coil.cells.map(({ inductanceH }) => Math.sqrt(inductanceH)))
    return { groups, coil, current, cells }
  })
}

/** Takes the next states by their weights; returns the first. */
type Claim = (...weights: readonly number[]) => number

export function stateLayout(network: Network, sourceOhm: number, filters: readonly FilterSection[]): StateLayout {
  const weights: number[] = []
  const claim: Claim = (...more) => {
    weights.push(...more)
    return weights.length - more.length
  }
  const totals = network.drivers.map(groupTotals)
  const sections = filters.map(({ denominator }) => (denominator[2] === 0 ? claim(1) : claim(1, 1)))
  const loops = loopsOf(network, totals, claim)
  const cones = totals.map(({ mass, stiffness }) => claim(Math.sqrt(mass), Math.sqrt(stiffness)))
  const moving = network.branches
    .filter(({ massKgPerM4 }) => massKgPerM4 > 0)
    .map(branch => {
      const { massKgPerM4: m, stiffnessPaPerM3: k, count } = branch
      const flow = claim(Math.sqrt(m / count))
      return { branch, flow, volume: k > 0 ? claim(Math.sqrt(k / count)) : -1 }
    })
  const charges = claim(...network.chambers.map(({ complianceM3PerPa }) => 1 / Math.sqrt(complianceM3PerPa)))
  return {
    network,
    sourceOhm,
    filters,
    sections,
    totals,
    loops,
    cones,
    moving,
    leaks: network.branches.filter(({ massKgPerM4 }) => massKgPerM4 === 0),
    charges,
    weights,
    order: weights.length
  }
}
