/** The passive part of the nodal equations. */
import { addColumn, type DualColumn, fillColumn } from '../../numeric/dual-column.ts'
import { packed } from '../../numeric/symmetric-elimination.ts'
import { branchAdmittance, chamberAdmittance } from './element-columns.ts'
import { BEHIND, type Network, type Place } from './network.ts'
import type { Solution, Workspace } from './solution.ts'

/** Adds an admittance between two places; a place of constant pressure has no equation. */
export function stamp(w: Workspace, from: Place, to: Place, y: DualColumn, count: number): void {
  const n = w.sources.length
  if (from >= 0) addColumn(w.matrix[packed(from, from, n)] as DualColumn, 0, y, 0, 1, count)
  if (to >= 0) addColumn(w.matrix[packed(to, to, n)] as DualColumn, 0, y, 0, 1, count)
  if (from >= 0 && to >= 0) addColumn(w.matrix[packed(from, to, n)] as DualColumn, 0, y, 0, -1, count)
}

export function assemblePassive({ chambers, branches }: Network, w: Workspace, count: number): void {
  for (const column of w.matrix) fillColumn(column, 0, 0, count)
  for (const column of w.sources) fillColumn(column, 0, 0, count)
  chambers.forEach((chamber, node) => {
    const y = w.chambers[node] as DualColumn
    chamberAdmittance(y, w.omegas, count, chamber)
    stamp(w, node, BEHIND, y, count)
  })
  branches.forEach((branch, index) => {
    const y = w.branches[index] as DualColumn
    branchAdmittance(y, w.omegas, count, branch)
    stamp(w, branch.from, branch.to, y, count)
  })
}

/** Pressure at `front` less that at `rear` in the scratch column, or nothing where both are constant. */
export function difference(
  w: Workspace,
  { pressures }: Pick<Solution, 'pressures'>,
  front: Place,
  rear: Place,
  offset: number,
  count: number
): DualColumn | undefined {
  if (front < 0 && rear < 0) return undefined
  fillColumn(w.scratch, 0, 0, count)
  if (front >= 0) addColumn(w.scratch, 0, pressures[front] as DualColumn, offset, 1, count)
  if (rear >= 0) addColumn(w.scratch, 0, pressures[rear] as DualColumn, offset, -1, count)
  return w.scratch
}
