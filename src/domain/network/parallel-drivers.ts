/** Driver groups that all lie across the terminals: each is an admittance and a flow source, its current eliminated. */
import { addColumn, type ComplexColumn, fillColumn, setColumn } from '../../numeric/linear/complex-column.ts'
import { type DriverColumns, fillDriverColumns, type GroupTotals } from './driver-columns.ts'
import type { Network } from './network.ts'
import { type Difference, difference, stamp } from './nodal-matrix.ts'
import type { Solution, Workspace } from './solution.ts'

/** Adds a flow source to a node; the first one there is set, so that nothing need be cleared. */
function push(w: Workspace, filled: boolean[], node: number, q: ComplexColumn, scale: number, count: number): void {
  if (node < 0) return
  const into = w.sources[node] as ComplexColumn
  if (filled[node]) addColumn(into, 0, q, 0, scale, count)
  else setColumn(into, q, scale, count)
  filled[node] = true
}

export function assembleParallel({ drivers }: Network, w: Workspace, count: number): void {
  const filled = w.sources.map(() => false)
  drivers.forEach((group, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    fillDriverColumns(columns, w.omegas, count, group.driver.coil, totals)
    stamp(w, group.front, group.rear, columns.y, count)
    const flow = totals.sd * totals.bl
    push(w, filled, group.front, columns.q, flow, count)
    push(w, filled, group.rear, columns.q, -flow, count)
  })
  filled.forEach((done, node) => {
    if (!done) fillColumn(w.sources[node] as ComplexColumn, 0, 0, count)
  })
}

/**
 * For one volt over the group.
 *
 *   u = q·(Bl − Sd·Ze·Δp)    i = q·(Zm + Bl·Sd·Δp)
 *
 * One long body on purpose: both flows share the numbers of a point, which functions of their own would have to hand over.
 */
function coneAndCurrent(
  velocity: ComplexColumn,
  current: ComplexColumn,
  start: number,
  { ze, zm, q }: DriverColumns,
  { bl, sd }: GroupTotals,
  { column, offset, sign }: Difference,
  count: number
): void {
  const { re: zRe, im: zIm, dre: zDre, dim: zDim } = ze
  const { re: mRe, im: mIm, dim: mDim } = zm
  const { re: qRe, im: qIm, dre: qDre, dim: qDim } = q
  const { re: pRe, im: pIm, dre: pDre, dim: pDim } = column
  const { re: uRe, im: uIm, dre: uDre, dim: uDim } = velocity
  const { re: iRe, im: iIm, dre: iDre, dim: iDim } = current
  const area = sign * sd
  for (let k = 0, o = start, d = offset; k < count; k++, o++, d++) {
    const zer = zRe[k] as number
    const zei = zIm[k] as number
    const dzer = zDre[k] as number
    const dzei = zDim[k] as number
    const pr = area * (pRe[d] as number)
    const pi = area * (pIm[d] as number)
    const dpr = area * (pDre[d] as number)
    const dpi = area * (pDim[d] as number)
    const qr = qRe[k] as number
    const qi = qIm[k] as number
    const dqr = qDre[k] as number
    const dqi = qDim[k] as number
    const fr = bl - zer * pr + zei * pi
    const fi = -zer * pi - zei * pr
    const dfr = dzei * pi - dzer * pr - zer * dpr + zei * dpi
    const dfi = -dzer * pi - dzei * pr - zer * dpi - zei * dpr
    uRe[o] = qr * fr - qi * fi
    uIm[o] = qr * fi + qi * fr
    uDre[o] = dqr * fr - dqi * fi + qr * dfr - qi * dfi
    uDim[o] = dqr * fi + dqi * fr + qr * dfi + qi * dfr
    const gr = (mRe[k] as number) + bl * pr
    const gi = (mIm[k] as number) + bl * pi
    const dgr = bl * dpr
    const dgi = (mDim[k] as number) + bl * dpi
    iRe[o] = qr * gr - qi * gi
    iIm[o] = qr * gi + qi * gr
    iDre[o] = dqr * gr - dqi * gi + qr * dgr - qi * dgi
    iDim[o] = dqr * gi + dqi * gr + qr * dgi + qi * dgr
  }
}

export function readParallel({ drivers }: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  const alone = drivers.length === 1
  if (!alone) fillColumn(into.current, offset, 0, count)
  drivers.forEach(({ front, rear }, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    const velocity = into.velocities[index] as ComplexColumn
    const delta = difference(w, into, front, rear, offset, count) ?? { column: w.zero, offset: 0, sign: 1 }
    if (alone) coneAndCurrent(velocity, into.current, offset, columns, totals, delta, count)
    else {
      coneAndCurrent(velocity, into.terminal, offset, columns, totals, delta, count)
      addColumn(into.current, offset, into.terminal, offset, 1, count)
    }
  })
}
