/** What a network sends to the listener. */
import { addColumn, addProduct, type ComplexColumn, fillColumn } from '../../numeric/linear/complex-column.ts'
import type { GroupTotals } from './driver-columns.ts'
import { addBranchAdmittance } from './element-columns.ts'
import { BEHIND, type Network } from './network.ts'
import type { Solution, Workspace } from './solution.ts'

/**
 * All that flows out is what the chambers give up, less what goes behind.
 *
 *   U = −Σ y_chamber·p − Σ flows to behind
 *
 * The same sum as over cones, ports, radiators and leaks, without the loss of digits where those cancel.
 *
 * @source derived: continuity of the air
 */
export function radiatedFlow(network: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  const { radiated, pressures, velocities } = into
  fillColumn(radiated, offset, 0, count)
  pressures.forEach((p, node) => {
    addProduct(radiated, w.chambers[node] as ComplexColumn, p, offset, -1, count)
  })
  for (const branch of network.branches) {
    if (branch.from !== BEHIND && branch.to !== BEHIND) continue
    const p = pressures[Math.max(branch.from, branch.to)]
    if (p === undefined) continue
    fillColumn(w.scratch, 0, 0, count)
    addBranchAdmittance(w.scratch, w.omegas, count, branch)
    addProduct(radiated, w.scratch, p, offset, -1, count)
  }
  network.drivers.forEach(({ front, rear }, index) => {
    const towards = (front === BEHIND ? -1 : 0) + (rear === BEHIND ? 1 : 0)
    const flow = towards * (w.totals[index] as GroupTotals).sd
    if (flow !== 0) addColumn(radiated, offset, velocities[index] as ComplexColumn, offset, flow, count)
  })
}
