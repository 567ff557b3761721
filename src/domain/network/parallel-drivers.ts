/** Driver groups that all lie across the terminals: each is an admittance and a flow source, its current eliminated. */
import { addColumn, type DualColumn, fillColumn } from '../../numeric/dual-column.ts'
import { type DriverColumns, fillDriverColumns, type GroupTotals, storeProduct } from './driver-columns.ts'
import type { Network } from './network.ts'
import { difference, stamp } from './nodal-matrix.ts'
import type { Solution, Workspace } from './solution.ts'

/** Pressure difference over a group; absent where both faces see constant pressure. */
type Difference = DualColumn | undefined

export function assembleParallel({ drivers }: Network, w: Workspace, count: number): void {
  drivers.forEach((group, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    fillDriverColumns(columns, w.omegas, count, group.driver.coil, totals)
    stamp(w, group.front, group.rear, columns.y, count)
    const push = totals.sd * totals.bl
    if (group.front >= 0) addColumn(w.sources[group.front] as DualColumn, 0, columns.q, 0, push, count)
    if (group.rear >= 0) addColumn(w.sources[group.rear] as DualColumn, 0, columns.q, 0, -push, count)
  })
}

/** u = q·(Bl − Sd·Ze·Δp) for one volt over the group */
function coneVelocity(
  into: DualColumn,
  offset: number,
  { ze, q }: DriverColumns,
  { bl, sd }: GroupTotals,
  delta: Difference,
  count: number
): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    let fr = bl
    let fi = 0
    let dfr = 0
    let dfi = 0
    if (delta !== undefined) {
      const zer = (ze.re[k] as number) * sd
      const zei = (ze.im[k] as number) * sd
      const dzer = (ze.dre[k] as number) * sd
      const dzei = (ze.dim[k] as number) * sd
      const pr = delta.re[k] as number
      const pi = delta.im[k] as number
      const dpr = delta.dre[k] as number
      const dpi = delta.dim[k] as number
      fr -= zer * pr - zei * pi
      fi -= zer * pi + zei * pr
      dfr -= dzer * pr - dzei * pi + zer * dpr - zei * dpi
      dfi -= dzer * pi + dzei * pr + zer * dpi + zei * dpr
    }
    storeProduct(into, o, q, k, fr, fi, dfr, dfi)
  }
}

/** i = q·(Zm + Bl·Sd·Δp) for one volt over the group */
function groupCurrent(
  into: DualColumn,
  offset: number,
  { zm, q }: DriverColumns,
  { bl, sd }: GroupTotals,
  delta: Difference,
  count: number
): void {
  const coupling = bl * sd
  for (let k = 0, o = offset; k < count; k++, o++) {
    let fr = zm.re[k] as number
    let fi = zm.im[k] as number
    let dfr = 0
    let dfi = zm.dim[k] as number
    if (delta !== undefined) {
      fr += coupling * (delta.re[k] as number)
      fi += coupling * (delta.im[k] as number)
      dfr += coupling * (delta.dre[k] as number)
      dfi += coupling * (delta.dim[k] as number)
    }
    storeProduct(into, o, q, k, fr, fi, dfr, dfi)
  }
}

export function readParallel({ drivers }: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  const alone = drivers.length === 1
  if (!alone) fillColumn(into.current, offset, 0, count)
  drivers.forEach(({ front, rear }, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    const velocity = into.velocities[index] as DualColumn
    const delta = difference(w, into, front, rear, offset, count)
    groupCurrent(alone ? into.current : velocity, offset, columns, totals, delta, count)
    if (!alone) addColumn(into.current, offset, velocity, offset, 1, count)
    coneVelocity(velocity, offset, columns, totals, delta, count)
  })
}
