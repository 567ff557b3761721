/** Gaussian elimination for symmetric complex systems of any order, at every point of a block, with the derivative of the solution. */
import type { ComplexColumn } from './complex-column.ts'

export type Columns = readonly ComplexColumn[]

/** Column of Y's entry (row, column), row ≤ column, in a packed upper triangle. */
export function packed(row: number, column: number, size: number): number {
  const [low, high] = row < column ? [row, column] : [column, row]
  return (low * (2 * size - low - 1)) / 2 + high
}

/** Gaussian elimination with partial pivoting, the matrix kept for the second right-hand side. */
export function solveMany(y: Columns, b: Columns, x: Columns, offset: number, count: number): void {
  const n = b.length
  const matrix = { re: new Float64Array(n * n), im: new Float64Array(n * n) }
  const side = { re: new Float64Array(n), im: new Float64Array(n) }
  const order = new Int32Array(n)
  for (let k = 0, o = offset; k < count; k++, o++) {
    for (let row = 0; row < n; row++) {
      for (let column = 0; column < n; column++) {
        const entry = y[packed(row, column, n)] as ComplexColumn
        matrix.re[row * n + column] = entry.re[k] as number
        matrix.im[row * n + column] = entry.im[k] as number
      }
      const right = b[row] as ComplexColumn
      side.re[row] = right.re[k] as number
      side.im[row] = right.im[k] as number
    }
    factorise(matrix, order)
    substitute(matrix, order, side)
    for (let row = 0; row < n; row++) {
      const unknown = x[row] as ComplexColumn
      unknown.re[o] = side.re[row] as number
      unknown.im[o] = side.im[row] as number
    }
    slopeSide(y, b, x, k, o, side)
    substitute(matrix, order, side)
    for (let row = 0; row < n; row++) {
      const unknown = x[row] as ComplexColumn
      unknown.dre[o] = side.re[row] as number
      unknown.dim[o] = side.im[row] as number
    }
  }
}

interface Complex {
  readonly re: Float64Array
  readonly im: Float64Array
}

/** side ← b' − Y'·x */
function slopeSide(y: Columns, b: Columns, x: Columns, k: number, o: number, side: Complex): void {
  const n = b.length
  for (let row = 0; row < n; row++) {
    const right = b[row] as ComplexColumn
    let re = right.dre[k] as number
    let im = right.dim[k] as number
    for (let column = 0; column < n; column++) {
      const entry = y[packed(row, column, n)] as ComplexColumn
      const unknown = x[column] as ComplexColumn
      const dr = entry.dre[k] as number
      const di = entry.dim[k] as number
      const xr = unknown.re[o] as number
      const xi = unknown.im[o] as number
      re -= dr * xr - di * xi
      im -= dr * xi + di * xr
    }
    side.re[row] = re
    side.im[row] = im
  }
}

/** A pivot that rounds to nothing belongs to a mode no source excites; this fraction of the largest entry keeps it finite. */
const SMALLEST_PIVOT = 1e-30

function factorise({ re, im }: Complex, order: Int32Array): void {
  const n = order.length
  let largest = 0
  for (let k = 0; k < n * n; k++) largest = Math.max(largest, Math.abs(re[k] as number), Math.abs(im[k] as number))
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot
    let bestSize = -1
    for (let row = pivot; row < n; row++) {
      const size = (re[row * n + pivot] as number) ** 2 + (im[row * n + pivot] as number) ** 2
      if (size > bestSize) [best, bestSize] = [row, size]
    }
    order[pivot] = best
    if (best !== pivot) swapRows(re, im, n, pivot, best)
    if (bestSize < (SMALLEST_PIVOT * largest) ** 2) re[pivot * n + pivot] = SMALLEST_PIVOT * largest
    eliminate(re, im, n, pivot)
  }
}

function swapRows(re: Float64Array, im: Float64Array, n: number, a: number, b: number): void {
  for (let column = 0; column < n; column++) {
    for (const part of [re, im]) {
      const held = part[a * n + column] as number
      part[a * n + column] = part[b * n + column] as number
      part[b * n + column] = held
    }
  }
}

function eliminate(re: Float64Array, im: Float64Array, n: number, pivot: number): void {
  const dr = re[pivot * n + pivot] as number
  const di = im[pivot * n + pivot] as number
  const size = dr * dr + di * di
  for (let row = pivot + 1; row < n; row++) {
    const at = row * n + pivot
    const fr = ((re[at] as number) * dr + (im[at] as number) * di) / size
    const fi = ((im[at] as number) * dr - (re[at] as number) * di) / size
    re[at] = fr
    im[at] = fi
    for (let column = pivot + 1; column < n; column++) {
      const ur = re[pivot * n + column] as number
      const ui = im[pivot * n + column] as number
      re[row * n + column] = (re[row * n + column] as number) - (fr * ur - fi * ui)
      im[row * n + column] = (im[row * n + column] as number) - (fr * ui + fi * ur)
    }
  }
}

function substitute({ re, im }: Complex, order: Int32Array, side: Complex): void {
  const n = order.length
  for (let row = 0; row < n; row++) {
    const from = order[row] as number
    const heldR = side.re[row] as number
    const heldI = side.im[row] as number
    side.re[row] = side.re[from] as number
    side.im[row] = side.im[from] as number
    side.re[from] = heldR
    side.im[from] = heldI
  }
  for (let row = 0; row < n; row++) subtractKnown(re, im, side, row, 0, row)
  for (let row = n - 1; row >= 0; row--) {
    subtractKnown(re, im, side, row, row + 1, n)
    const dr = re[row * n + row] as number
    const di = im[row * n + row] as number
    const size = dr * dr + di * di
    const sr = side.re[row] as number
    const si = side.im[row] as number
    side.re[row] = (sr * dr + si * di) / size
    side.im[row] = (si * dr - sr * di) / size
  }
}

function subtractKnown(re: Float64Array, im: Float64Array, side: Complex, row: number, from: number, to: number): void {
  const n = side.re.length
  for (let column = from; column < to; column++) {
    const ur = re[row * n + column] as number
    const ui = im[row * n + column] as number
    const sr = side.re[column] as number
    const si = side.im[column] as number
    side.re[row] = (side.re[row] as number) - (ur * sr - ui * si)
    side.im[row] = (side.im[row] as number) - (ur * si + ui * sr)
  }
}
