/** Complex values over a grid, each with its derivative by the grid's variable; plain arrays, so that loops over them stay tight. */
export interface DualColumn {
  readonly re: Float64Array
  readonly im: Float64Array
  /** Derivative of the real part. */
  readonly dre: Float64Array
  /** Derivative of the imaginary part. */
  readonly dim: Float64Array
}

export function dualColumn(length: number): DualColumn {
  return {
    re: new Float64Array(length),
    im: new Float64Array(length),
    dre: new Float64Array(length),
    dim: new Float64Array(length)
  }
}

export const dualColumns = (count: number, length: number): readonly DualColumn[] =>
  Array.from({ length: count }, () => dualColumn(length))

/** A constant from `offset` on, its derivative zero. */
export function fillColumn({ re, im, dre, dim }: DualColumn, offset: number, value: number, count: number): void {
  const end = offset + count
  re.fill(value, offset, end)
  im.fill(0, offset, end)
  dre.fill(0, offset, end)
  dim.fill(0, offset, end)
}

/** into ← into + scale·from, each from its own offset */
export function addColumn(
  into: DualColumn,
  offset: number,
  from: DualColumn,
  fromOffset: number,
  scale: number,
  count: number
): void {
  const { re, im, dre, dim } = into
  const a = from.re
  const b = from.im
  const da = from.dre
  const db = from.dim
  for (let o = offset, f = fromOffset; o < offset + count; o++, f++) {
    re[o] = (re[o] as number) + scale * (a[f] as number)
    im[o] = (im[o] as number) + scale * (b[f] as number)
    dre[o] = (dre[o] as number) + scale * (da[f] as number)
    dim[o] = (dim[o] as number) + scale * (db[f] as number)
  }
}

/** into ← into + scale·y·p: y from its start, into and p from `offset` */
export function addProduct(
  into: DualColumn,
  y: DualColumn,
  p: DualColumn,
  offset: number,
  scale: number,
  count: number
): void {
  const { re, im, dre, dim } = into
  for (let k = 0, o = offset; k < count; k++, o++) {
    const yr = scale * (y.re[k] as number)
    const yi = scale * (y.im[k] as number)
    const dyr = scale * (y.dre[k] as number)
    const dyi = scale * (y.dim[k] as number)
    const pr = p.re[o] as number
    const pi = p.im[o] as number
    const dpr = p.dre[o] as number
    const dpi = p.dim[o] as number
    re[o] = (re[o] as number) + yr * pr - yi * pi
    im[o] = (im[o] as number) + yr * pi + yi * pr
    dre[o] = (dre[o] as number) + dyr * pr - dyi * pi + yr * dpr - yi * dpi
    dim[o] = (dim[o] as number) + dyr * pi + dyi * pr + yr * dpi + yi * dpr
  }
}

/** into ← into·by: into from `offset`, by from its start */
export function multiplyColumn(into: DualColumn, offset: number, by: DualColumn, count: number): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    const ar = into.re[o] as number
    const ai = into.im[o] as number
    const dar = into.dre[o] as number
    const dai = into.dim[o] as number
    const br = by.re[k] as number
    const bi = by.im[k] as number
    const dbr = by.dre[k] as number
    const dbi = by.dim[k] as number
    into.re[o] = ar * br - ai * bi
    into.im[o] = ar * bi + ai * br
    into.dre[o] = dar * br - dai * bi + ar * dbr - ai * dbi
    into.dim[o] = dar * bi + dai * br + ar * dbi + ai * dbr
  }
}

/** into ← 1/of */
export function invertColumn(into: DualColumn, of: DualColumn, count: number): void {
  for (let k = 0; k < count; k++) {
    const ar = of.re[k] as number
    const ai = of.im[k] as number
    const size = ar * ar + ai * ai
    const qr = ar / size
    const qi = -ai / size
    const sr = qr * qr - qi * qi
    const si = 2 * qr * qi
    const dar = of.dre[k] as number
    const dai = of.dim[k] as number
    into.re[k] = qr
    into.im[k] = qi
    into.dre[k] = si * dai - sr * dar
    into.dim[k] = -(sr * dai + si * dar)
  }
}
