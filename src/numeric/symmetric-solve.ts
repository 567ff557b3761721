/** Y·x = b for symmetric complex Y, at every point of a block, with the derivative of x: Y·x' = b' − Y'·x. */
import type { DualColumn } from './dual-column.ts'
import { type Columns, solveMany } from './symmetric-elimination.ts'

function solveOne(y: DualColumn, b: DualColumn, x: DualColumn, offset: number, count: number): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    const yr = y.re[k] as number
    const yi = y.im[k] as number
    const size = yr * yr + yi * yi
    const br = b.re[k] as number
    const bi = b.im[k] as number
    const xr = (br * yr + bi * yi) / size
    const xi = (bi * yr - br * yi) / size
    const dyr = y.dre[k] as number
    const dyi = y.dim[k] as number
    const cr = (b.dre[k] as number) - (dyr * xr - dyi * xi)
    const ci = (b.dim[k] as number) - (dyr * xi + dyi * xr)
    x.re[o] = xr
    x.im[o] = xi
    x.dre[o] = (cr * yr + ci * yi) / size
    x.dim[o] = (ci * yr - cr * yi) / size
  }
}

function solveTwo(y: Columns, b: Columns, x: Columns, offset: number, count: number): void {
  const [y11, y12, y22] = y as [DualColumn, DualColumn, DualColumn]
  const [b1, b2] = b as [DualColumn, DualColumn]
  const [x1, x2] = x as [DualColumn, DualColumn]
  for (let k = 0, o = offset; k < count; k++, o++) {
    const ar = y11.re[k] as number
    const ai = y11.im[k] as number
    const mr = y12.re[k] as number
    const mi = y12.im[k] as number
    const dr = y22.re[k] as number
    const di = y22.im[k] as number
    const detR = ar * dr - ai * di - (mr * mr - mi * mi)
    const detI = ar * di + ai * dr - 2 * mr * mi
    const size = detR * detR + detI * detI
    const wr = detR / size
    const wi = -detI / size
    let sr = b1.re[k] as number
    let si = b1.im[k] as number
    let tr = b2.re[k] as number
    let ti = b2.im[k] as number
    let ur = dr * sr - di * si - (mr * tr - mi * ti)
    let ui = dr * si + di * sr - (mr * ti + mi * tr)
    let vr = ar * tr - ai * ti - (mr * sr - mi * si)
    let vi = ar * ti + ai * tr - (mr * si + mi * sr)
    const p1r = ur * wr - ui * wi
    const p1i = ur * wi + ui * wr
    const p2r = vr * wr - vi * wi
    const p2i = vr * wi + vi * wr
    const dmr = y12.dre[k] as number
    const dmi = y12.dim[k] as number
    const dar = y11.dre[k] as number
    const dai = y11.dim[k] as number
    const ddr = y22.dre[k] as number
    const ddi = y22.dim[k] as number
    sr = (b1.dre[k] as number) - (dar * p1r - dai * p1i) - (dmr * p2r - dmi * p2i)
    si = (b1.dim[k] as number) - (dar * p1i + dai * p1r) - (dmr * p2i + dmi * p2r)
    tr = (b2.dre[k] as number) - (dmr * p1r - dmi * p1i) - (ddr * p2r - ddi * p2i)
    ti = (b2.dim[k] as number) - (dmr * p1i + dmi * p1r) - (ddr * p2i + ddi * p2r)
    ur = dr * sr - di * si - (mr * tr - mi * ti)
    ui = dr * si + di * sr - (mr * ti + mi * tr)
    vr = ar * tr - ai * ti - (mr * sr - mi * si)
    vi = ar * ti + ai * tr - (mr * si + mi * sr)
    x1.re[o] = p1r
    x1.im[o] = p1i
    x2.re[o] = p2r
    x2.im[o] = p2i
    x1.dre[o] = ur * wr - ui * wi
    x1.dim[o] = ur * wi + ui * wr
    x2.dre[o] = vr * wr - vi * wi
    x2.dim[o] = vr * wi + vi * wr
  }
}

/**
 * @param y  packed upper triangle of Y, a column each, see `packed`
 * @param b  right-hand sides; 1 to 16 of them
 * @param x  unknowns, written from `offset`
 */
export function solveSymmetric(y: Columns, b: Columns, x: Columns, offset: number, count: number): void {
  if (b.length === 0) return
  if (b.length === 1) solveOne(y[0] as DualColumn, b[0] as DualColumn, x[0] as DualColumn, offset, count)
  else if (b.length === 2) solveTwo(y, b, x, offset, count)
  else solveMany(y, b, x, offset, count)
}
