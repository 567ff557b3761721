/** Complex values over a grid, each with its derivative by the grid's variable; plain arrays, so that loops over them stay tight. */
export interface ComplexColumn {
  readonly re: Float64Array
  readonly im: Float64Array
  /** Derivative of the real part. */
  readonly dre: Float64Array
  /** Derivative of the imaginary part. */
  readonly dim: Float64Array
}

export function complexColumn(length: number): ComplexColumn {
  return complexColumns(1, length)[0] as ComplexColumn
}

/** Several columns in one piece of memory, which is far quicker to get than many small ones. */
export function complexColumns(count: number, length: number): readonly ComplexColumn[] {
  const memory = new Float64Array(4 * count * length)
  const part = (index: number) => memory.subarray(index * length, (index + 1) * length)
  return Array.from({ length: count }, (_, column) => ({
    re: part(4 * column),
    im: part(4 * column + 1),
    dre: part(4 * column + 2),
    dim: part(4 * column + 3)
  }))
}

/** A constant from `offset` on, its derivative zero. */
export function fillColumn({ re, im, dre, dim }: ComplexColumn, offset: number, value: number, count: number): void {
  const end = offset + count
  re.fill(value, offset, end)
  im.fill(0, offset, end)
  dre.fill(0, offset, end)
  dim.fill(0, offset, end)
}

/** into ← scale·from, both from their start */
export function setColumn(into: ComplexColumn, from: ComplexColumn, scale: number, count: number): void {
  const { re, im, dre, dim } = into
  const { re: fRe, im: fIm, dre: fDre, dim: fDim } = from
  for (let k = 0; k < count; k++) {
    re[k] = scale * (fRe[k] as number)
    im[k] = scale * (fIm[k] as number)
    dre[k] = scale * (fDre[k] as number)
    dim[k] = scale * (fDim[k] as number)
  }
}

/** into ← into + scale·from, each from its own offset */
export function addColumn(
  into: ComplexColumn,
  offset: number,
  from: ComplexColumn,
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
  into: ComplexColumn,
  y: ComplexColumn,
  p: ComplexColumn,
  offset: number,
  scale: number,
  count: number
): void {
  const { re, im, dre, dim } = into
  const { re: yRe, im: yIm, dre: yDre, dim: yDim } = y
  const { re: pRe, im: pIm, dre: pDre, dim: pDim } = p
  for (let k = 0, o = offset; k < count; k++, o++) {
    const yr = scale * (yRe[k] as number)
    const yi = scale * (yIm[k] as number)
    const dyr = scale * (yDre[k] as number)
    const dyi = scale * (yDim[k] as number)
    const pr = pRe[o] as number
    const pi = pIm[o] as number
    const dpr = pDre[o] as number
    const dpi = pDim[o] as number
    re[o] = (re[o] as number) + yr * pr - yi * pi
    im[o] = (im[o] as number) + yr * pi + yi * pr
    dre[o] = (dre[o] as number) + dyr * pr - dyi * pi + yr * dpr - yi * dpi
    dim[o] = (dim[o] as number) + dyr * pi + dyi * pr + yr * dpi + yi * dpr
  }
}

/** into ← into·by: into from `offset`, by from its start */
export function multiplyColumn(into: ComplexColumn, offset: number, by: ComplexColumn, count: number): void {
  const { re, im, dre, dim } = into
  const { re: bRe, im: bIm, dre: bDre, dim: bDim } = by
  for (let k = 0, o = offset; k < count; k++, o++) {
    const ar = re[o] as number
    const ai = im[o] as number
    const dar = dre[o] as number
    const dai = dim[o] as number
    const br = bRe[k] as number
    const bi = bIm[k] as number
    const dbr = bDre[k] as number
    const dbi = bDim[k] as number
    re[o] = ar * br - ai * bi
    im[o] = ar * bi + ai * br
    dre[o] = dar * br - dai * bi + ar * dbr - ai * dbi
    dim[o] = dar * bi + dai * br + ar * dbi + ai * dbr
  }
}

/** into ← 1/of */
export function invertColumn(into: ComplexColumn, of: ComplexColumn, count: number): void {
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
