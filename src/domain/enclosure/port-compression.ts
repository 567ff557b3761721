/** What the jets at the ends of a port take from the level at a given drive. */

import { branchFlow } from '../network/branch-flow.ts'
import type { Branch, Network } from '../network/network.ts'
import { emptySolution, type Solution } from '../network/solution.ts'
import { networkSolver } from '../network/solver.ts'
import { jetResistance } from './jet-resistance.ts'
import type { ResponseSystem } from './response-system.ts'

const MAX_ROUNDS = 80
const CLOSE_ENOUGH = 1e-7

interface JetPort {
  readonly branch: Branch & { resistancePaSPerM3: number }
  readonly areaM2: number
  readonly count: number
  readonly ownResistance: number
}

/** The network with its branches open to change, and which of them are ports. */
function changeable({ network, ports }: ResponseSystem) {
  const branches = network.branches.map(branch => ({ ...branch }))
  const jets = ports.flatMap(({ branch: own, areaM2, count }): JetPort[] => {
    const branch = branches[network.branches.indexOf(own)]
    return branch === undefined ? [] : [{ branch, areaM2, count, ownResistance: own.resistancePaSPerM3 }]
  })
  return { network: { ...network, branches } satisfies Network, ports: jets }
}

const peakSpeed = (solution: Solution, { branch, areaM2, count }: JetPort, voltageV: number) =>
  (Math.SQRT2 * voltageV * (branchFlow(solution, branch)[0] as number)) / (count * areaM2)

export interface JetSolution {
  /** Radiated flow for one volt, modulus [m³/s]. */
  readonly radiatedM3PerS: number
  /** Highest peak speed over the ports [m/s]. */
  readonly airSpeedMPerS: number
}

/**
 * The system at one frequency with its ports' jet losses at the speeds they really have.
 *
 *   R = R_port + (4/3π)·ρ·K·v̂(R)/S, fixed point by half steps
 *
 * @validity quasi-steady jets: an upper estimate of the loss, ±50 %
 * @source derived: see jetResistance; that mass hardly changes with level: Bezzola et al., AES paper 10423, 2020 (abstract read)
 * @check  energy: the loss never adds level at the tuning; K = 0 leaves the linear response
 */
export function jetSolver(system: ResponseSystem, lossFactor: number) {
  const { network, ports } = changeable(system)
  const solver = networkSolver(network, system.sourceOhm)
  const solution = emptySolution(network, new Float64Array(1))
  return (frequencyHz: number, voltageV: number): JetSolution => {
    solution.omegas[0] = 2 * Math.PI * frequencyHz
    for (const { branch, ownResistance } of ports) branch.resistancePaSPerM3 = ownResistance
    solver.solve(solution)
    for (let round = 0, moved = 1; round < MAX_ROUNDS && moved > CLOSE_ENOUGH; round++) {
      moved = 0
      const speeds = ports.map(port => peakSpeed(solution, port, voltageV))
      for (const [index, { branch, areaM2, ownResistance }] of ports.entries()) {
        const jet = jetResistance(system.air.densityKgPerM3, areaM2, lossFactor, speeds[index] as number)
        const next = (branch.resistancePaSPerM3 + ownResistance + jet) / 2
        moved = Math.max(moved, Math.abs(next - branch.resistancePaSPerM3) / Math.max(next, 1e-12))
        branch.resistancePaSPerM3 = next
      }
      solver.solve(solution)
    }
    const { re, im } = solution.radiated
    return {
      radiatedM3PerS: Math.hypot(re[0] as number, im[0] as number),
      airSpeedMPerS: Math.max(0, ...ports.map(port => peakSpeed(solution, port, voltageV)))
    }
  }
}
