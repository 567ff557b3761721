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

export function clearColumn({ re, im, dre, dim }: DualColumn, count: number): void {
  re.fill(0, 0, count)
  im.fill(0, 0, count)
  dre.fill(0, 0, count)
  dim.fill(0, 0, count)
}

/** into ← into + sign·from */
export function addColumn(into: DualColumn, from: DualColumn, sign: number, count: number): void {
  for (let k = 0; k < count; k++) {
    into.re[k] = (into.re[k] as number) + sign * (from.re[k] as number)
    into.im[k] = (into.im[k] as number) + sign * (from.im[k] as number)
    into.dre[k] = (into.dre[k] as number) + sign * (from.dre[k] as number)
    into.dim[k] = (into.dim[k] as number) + sign * (from.dim[k] as number)
  }
}

/** into ← into·by, from `offset` of `into` and the start of `by` */
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
