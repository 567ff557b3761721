/**
 * Driver groups that share one current: the current is an unknown beside the pressures.
 *
 *   Σ(Ze + Bl²/Zm)·i − Σ(Bl·Sd/Zm)·Δp = E      u = (Bl·i − Sd·Δp)/Zm
 *
 * The equations stay symmetric, with −Bl·Sd/Zm between the current and the two faces.
 *
 * @source derived from the driver's equations, see driver-columns.ts
 */
import { addColumn, type DualColumn, fillColumn, invertColumn } from '../../numeric/dual-column.ts'
import { packed } from '../../numeric/symmetric-elimination.ts'
import { type DriverColumns, fillImpedances, type GroupTotals, storeProduct } from './driver-columns.ts'
import type { Network } from './network.ts'
import { difference, stamp } from './nodal-matrix.ts'
import type { Solution, Workspace } from './solution.ts'

export function assembleSeries({ drivers }: Network, w: Workspace, count: number): void {
  const n = w.sources.length
  const shared = n - 1
  const own = w.matrix[packed(shared, shared, n)] as DualColumn
  fillColumn(w.sources[shared] as DualColumn, 0, 1, count)
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
    if (front >= 0) addColumn(w.matrix[packed(front, shared, n)] as DualColumn, 0, columns.q, 0, -bl * sd, count)
    if (rear >= 0) addColumn(w.matrix[packed(rear, shared, n)] as DualColumn, 0, columns.q, 0, bl * sd, count)
  })
}

export function readSeries({ drivers }: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  const { current } = into
  drivers.forEach(({ front, rear }, index) => {
    const { q } = w.drivers[index] as DriverColumns
    const { sd, bl } = w.totals[index] as GroupTotals
    const delta = difference(w, into, front, rear, offset, count)
    const velocity = into.velocities[index] as DualColumn
    for (let k = 0, o = offset; k < count; k++, o++) {
      storeProduct(
        velocity,
        o,
        q,
        k,
        bl * (current.re[o] as number) - sd * (delta?.re[k] ?? 0),
        bl * (current.im[o] as number) - sd * (delta?.im[k] ?? 0),
        bl * (current.dre[o] as number) - sd * (delta?.dre[k] ?? 0),
        bl * (current.dim[o] as number) - sd * (delta?.dim[k] ?? 0)
      )
    }
  })
}
