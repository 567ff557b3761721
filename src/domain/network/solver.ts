/**
 * Solves a network over a grid of frequencies, element by element in blocks: each element adds its column of admittances,
 * then all points of the block are solved. One path for every network, from none to many unknown pressures.
 */
import { addColumn, fillColumn, invertColumn, multiplyColumn } from '../../numeric/linear/complex-column.ts'
import { solveSymmetric } from '../../numeric/linear/symmetric-solve.ts'
import type { Network } from './network.ts'
import { assemblePassive } from './nodal-matrix.ts'
import { assembleParallel, readParallel } from './parallel-drivers.ts'
import { radiatedFlow } from './radiated-flow.ts'
import { assembleSeries, readSeries } from './series-drivers.ts'
import { BLOCK, hasSharedCurrent, type Solution, type Workspace, workspace } from './solution.ts'

export interface NetworkSolver {
  readonly network: Network
  /** Fills a solution made by `emptySolution` of this network. */
  readonly solve: (into: Solution) => void
}

/** From one volt over the drivers to one volt of the source: terminal = 1/(1 + Rg·i). */
function applySource(sourceOhm: number, w: Workspace, into: Solution, offset: number, count: number): void {
  const { current, terminal } = into
  fillColumn(terminal, offset, 1, count)
  if (sourceOhm === 0) return
  fillColumn(w.scratch, 0, 1, count)
  addColumn(w.scratch, 0, current, offset, sourceOhm, count)
  invertColumn(w.scratch, w.scratch, count)
  for (const column of [terminal, current, into.radiated, ...into.pressures, ...into.velocities]) {
    multiplyColumn(column, offset, w.scratch, count)
  }
}

/** @param sourceOhm  resistance of amplifier and cable before the terminals [Ω] ≥ 0 */
export function networkSolver(network: Network, sourceOhm: number): NetworkSolver {
  const shared = hasSharedCurrent(network)
  let known: Workspace | undefined
  const workFor = (points: number) => {
    if (known === undefined || known.omegas.length < points) known = workspace(network, points)
    return known
  }
  const solveBlock = (into: Solution, offset: number, count: number) => {
    const w = workFor(count)
    for (let k = 0; k < count; k++) w.omegas[k] = into.omegas[offset + k] as number
    assemblePassive(network, w, count)
    if (shared) {
      assembleSeries(network, w, count)
      solveSymmetric(w.matrix, w.sources, [...into.pressures, into.current], offset, count)
      readSeries(network, w, into, offset, count)
    } else {
      assembleParallel(network, w, count)
      solveSymmetric(w.matrix, w.sources, into.pressures, offset, count)
      readParallel(network, w, into, offset, count)
    }
    radiatedFlow(network, w, into, offset, count)
    applySource(sourceOhm, w, into, offset, count)
  }
  return {
    network,
    solve: into => {
      for (let offset = 0; offset < into.omegas.length; offset += BLOCK) {
        solveBlock(into, offset, Math.min(BLOCK, into.omegas.length - offset))
      }
    }
  }
}
