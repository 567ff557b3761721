/** The passive part of the nodal equations. */
import { addColumn, type ComplexColumn, fillColumn, setColumn } from '../../numeric/linear/complex-column.ts'
import { packed } from '../../numeric/linear/symmetric-elimination.ts'
import { addBranchAdmittance, chamberAdmittance } from './element-columns.ts'
import type { Network, Place } from './network.ts'
import type { Solution, Workspace } from './solution.ts'

export const entry = (w: Workspace, row: Place, column: Place): ComplexColumn =>
  w.matrix[packed(row, column, w.sources.length)] as ComplexColumn

/** Adds an admittance between two places; a place of constant pressure has no equation. */
export function stamp(w: Workspace, from: Place, to: Place, y: ComplexColumn, count: number): void {
  if (from >= 0) addColumn(entry(w, from, from), 0, y, 0, 1, count)
  if (to >= 0) addColumn(entry(w, to, to), 0, y, 0, 1, count)
  if (from >= 0 && to >= 0) addColumn(entry(w, from, to), 0, y, 0, -1, count)
}

export function assemblePassive({ chambers, branches }: Network, w: Workspace, count: number): void {
  const lonely = w.sources.length === 1 && chambers.length === 1
  if (!lonely) for (const column of w.matrix) fillColumn(column, 0, 0, count)
  chambers.forEach((chamber, node) => {
    const y = w.chambers[node] as ComplexColumn
    chamberAdmittance(y, w.omegas, count, chamber)
    setColumn(entry(w, node, node), y, 1, count)
  })
  for (const branch of branches) {
    const { from, to } = branch
    if (from < 0 !== to < 0) {
      const inner = Math.max(from, to)
      addBranchAdmittance(entry(w, inner, inner), w.omegas, count, branch)
    } else if (from >= 0) {
      fillColumn(w.scratch, 0, 0, count)
      addBranchAdmittance(w.scratch, w.omegas, count, branch)
      stamp(w, from, to, w.scratch, count)
    }
  }
}

/** Pressure of one place less that of another, from `offset` of a column and with a sign; absent where both are constant. */
export interface Difference {
  readonly column: ComplexColumn
  readonly offset: number
  readonly sign: number
}

export function difference(
  w: Workspace,
  { pressures }: Pick<Solution, 'pressures'>,
  front: Place,
  rear: Place,
  offset: number,
  count: number
): Difference | undefined {
  const before = pressures[front]
  const behind = pressures[rear]
  if (before === undefined) return behind && { column: behind, offset, sign: -1 }
  if (behind === undefined) return { column: before, offset, sign: 1 }
  fillColumn(w.scratch, 0, 0, count)
  addColumn(w.scratch, 0, before, offset, 1, count)
  addColumn(w.scratch, 0, behind, offset, -1, count)
  return { column: w.scratch, offset: 0, sign: 1 }
}
