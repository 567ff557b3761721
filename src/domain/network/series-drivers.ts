/**
 * Driver groups that share one current: the current is an unknown beside the pressures.
 *
 *   Σ(Ze + Bl²/Zm)·i − Σ(Bl·Sd/Zm)·Δp = E      u = (Bl·i − Sd·Δp)/Zm
 *
 * The equations stay symmetric, with −Bl·Sd/Zm between the current and the two faces.
 *
 * @source derived from the driver's equations, see driver-columns.ts
 */
import {
  addColumn,
  type ComplexColumn,
  fillColumn,
  invertColumn,
  multiplyColumn
} from '../../numeric/linear/complex-column.ts'
import { type DriverColumns, fillImpedances, type GroupTotals } from './driver-columns.ts'
import type { Network } from './network.ts'
import { difference, entry, stamp } from './nodal-matrix.ts'
import type { Solution, Workspace } from './solution.ts'

export function assembleSeries({ drivers }: Network, w: Workspace, count: number): void {
  const shared = w.sources.length - 1
  const own = entry(w, shared, shared)
  for (const column of w.sources) fillColumn(column, 0, 0, count)
  fillColumn(w.sources[shared] as ComplexColumn, 0, 1, count)
  drivers.forEach(({ front, rear, driver }, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    const { sd, bl } = totals
    fillImpedances(columns, w.omegas, count, driver.coil, totals)
    invertColumn(columns.q, columns.zm, count)
    addColumn(own, 0, columns.ze, 0, 1, count)
    addColumn(own, 0, columns.q, 0, bl * bl, count)
    fillColumn(columns.y, 0, 0, count)
    addColumn(columns.y, 0, columns.q, 0, sd * sd, count)
    stamp(w, front, rear, columns.y, count)
    if (front >= 0) addColumn(entry(w, front, shared), 0, columns.q, 0, -bl * sd, count)
    if (rear >= 0) addColumn(entry(w, rear, shared), 0, columns.q, 0, bl * sd, count)
  })
}

export function readSeries({ drivers }: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  drivers.forEach(({ front, rear }, index) => {
    const { q } = w.drivers[index] as DriverColumns
    const { sd, bl } = w.totals[index] as GroupTotals
    const velocity = into.velocities[index] as ComplexColumn
    const delta = difference(w, into, front, rear, offset, count)
    fillColumn(velocity, offset, 0, count)
    addColumn(velocity, offset, into.current, offset, bl, count)
    if (delta !== undefined) addColumn(velocity, offset, delta.column, delta.offset, -sd * delta.sign, count)
    multiplyColumn(velocity, offset, q, count)
  })
}
