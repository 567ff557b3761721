/** Y·x = b for symmetric complex Y, at every point of a block, with the derivative of x: Y·x' = b' − Y'·x. */
import type { ComplexColumn } from './complex-column.ts'
import { type Columns, solveMany } from './symmetric-elimination.ts'

function solveOne(y: ComplexColumn, b: ComplexColumn, x: ComplexColumn, offset: number, count: number): void {
  const { re: yRe, im: yIm, dre: yDre, dim: yDim } = y
  const { re: bRe, im: bIm, dre: bDre, dim: bDim } = b
  const { re, im, dre, dim } = x
  for (let k = 0, o = offset; k < count; k++, o++) {
    const yr = yRe[k] as number
    const yi = yIm[k] as number
    const size = 1 / (yr * yr + yi * yi)
    const wr = yr * size
    const wi = -yi * size
    const br = bRe[k] as number
    const bi = bIm[k] as number
    const xr = br * wr - bi * wi
    const xi = br * wi + bi * wr
    const dyr = yDre[k] as number
    const dyi = yDim[k] as number
    const cr = (bDre[k] as number) - (dyr * xr - dyi * xi)
    const ci = (bDim[k] as number) - (dyr * xi + dyi * xr)
    re[o] = xr
    im[o] = xi
    dre[o] = cr * wr - ci * wi
    dim[o] = cr * wi + ci * wr
  }
}

/** One long body on purpose: its steps share some twenty numbers a point, which functions of their own would have to hand back. */
function solveTwo(y: Columns, b: Columns, x: Columns, offset: number, count: number): void {
  const [y11, y12, y22] = y as [ComplexColumn, ComplexColumn, ComplexColumn]
  const [b1, b2] = b as [ComplexColumn, ComplexColumn]
  const [x1, x2] = x as [ComplexColumn, ComplexColumn]
  const { re: y11Re, im: y11Im, dre: y11Dre, dim: y11Dim } = y11
  const { re: y12Re, im: y12Im, dre: y12Dre, dim: y12Dim } = y12
  const { re: y22Re, im: y22Im, dre: y22Dre, dim: y22Dim } = y22
  const { re: b1Re, im: b1Im, dre: b1Dre, dim: b1Dim } = b1
  const { re: b2Re, im: b2Im, dre: b2Dre, dim: b2Dim } = b2
  const { re: x1Re, im: x1Im, dre: x1Dre, dim: x1Dim } = x1
  const { re: x2Re, im: x2Im, dre: x2Dre, dim: x2Dim } = x2
  for (let k = 0, o = offset; k < count; k++, o++) {
    const ar = y11Re[k] as number
    const ai = y11Im[k] as number
    const mr = y12Re[k] as number
    const mi = y12Im[k] as number
    const dr = y22Re[k] as number
    const di = y22Im[k] as number
    const detR = ar * dr - ai * di - (mr * mr - mi * mi)
    const detI = ar * di + ai * dr - 2 * mr * mi
    const size = detR * detR + detI * detI
    const wr = detR / size
    const wi = -detI / size
    let sr = b1Re[k] as number
    let si = b1Im[k] as number
    let tr = b2Re[k] as number
    let ti = b2Im[k] as number
    let ur = dr * sr - di * si - (mr * tr - mi * ti)
    let ui = dr * si + di * sr - (mr * ti + mi * tr)
    let vr = ar * tr - ai * ti - (mr * sr - mi * si)
    let vi = ar * ti + ai * tr - (mr * si + mi * sr)
    const p1r = ur * wr - ui * wi
    const p1i = ur * wi + ui * wr
    const p2r = vr * wr - vi * wi
    const p2i = vr * wi + vi * wr
    const dmr = y12Dre[k] as number
    const dmi = y12Dim[k] as number
    const dar = y11Dre[k] as number
    const dai = y11Dim[k] as number
    const ddr = y22Dre[k] as number
    const ddi = y22Dim[k] as number
    sr = (b1Dre[k] as number) - (dar * p1r - dai * p1i) - (dmr * p2r - dmi * p2i)
    si = (b1Dim[k] as number) - (dar * p1i + dai * p1r) - (dmr * p2i + dmi * p2r)
    tr = (b2Dre[k] as number) - (dmr * p1r - dmi * p1i) - (ddr * p2r - ddi * p2i)
    ti = (b2Dim[k] as number) - (dmr * p1i + dmi * p1r) - (ddr * p2i + ddi * p2r)
    ur = dr * sr - di * si - (mr * tr - mi * ti)
    ui = dr * si + di * sr - (mr * ti + mi * tr)
    vr = ar * tr - ai * ti - (mr * sr - mi * si)
    vi = ar * ti + ai * tr - (mr * si + mi * sr)
    x1Re[o] = p1r
    x1Im[o] = p1i
    x2Re[o] = p2r
    x2Im[o] = p2i
    x1Dre[o] = ur * wr - ui * wi
    x1Dim[o] = ur * wi + ui * wr
    x2Dre[o] = vr * wr - vi * wi
    x2Dim[o] = vr * wi + vi * wr
  }
}

/**
 * @param y  packed upper triangle of Y, a column each, see `packed`
 * @param b  right-hand sides; 1 to 16 of them
 * @param x  unknowns, written from `offset`
 */
export function solveSymmetric(y: Columns, b: Columns, x: Columns, offset: number, count: number): void {
  if (b.length === 0) return
  if (b.length === 1) solveOne(y[0] as ComplexColumn, b[0] as ComplexColumn, x[0] as ComplexColumn, offset, count)
  else if (b.length === 2) solveTwo(y, b, x, offset, count)
  else solveMany(y, b, x, offset, count)
}
