/** Small dense complex systems. */

export interface ComplexVector {
  readonly re: Float64Array
  readonly im: Float64Array
}

/**
 * A·x = b by elimination with partial pivoting; A (row by row) and b are overwritten, b by x.
 *
 * @param a  n² entries
 * @param b  n entries
 */
export function solveInPlace(a: ComplexVector, b: ComplexVector): void {
  const n = b.re.length
  for (let pivot = 0; pivot < n; pivot++) {
    swapLargest(a, b, pivot)
    for (let row = 0; row < n; row++) if (row !== pivot) eliminate(a, b, row, pivot)
  }
  for (let row = 0; row < n; row++) {
    const [dr, di] = [a.re[row * n + row] as number, a.im[row * n + row] as number]
    const [br, bi] = [b.re[row] as number, b.im[row] as number]
    const size = dr * dr + di * di
    b.re[row] = (br * dr + bi * di) / size
    b.im[row] = (bi * dr - br * di) / size
  }
}

function swap(of: Float64Array, one: number, other: number): void {
  const held = of[one] as number
  of[one] = of[other] as number
  of[other] = held
}

function swapLargest(a: ComplexVector, b: ComplexVector, pivot: number): void {
  const n = b.re.length
  const size = (row: number) => (a.re[row * n + pivot] as number) ** 2 + (a.im[row * n + pivot] as number) ** 2
  let best = pivot
  for (let row = pivot + 1; row < n; row++) if (size(row) > size(best)) best = row
  if (best === pivot) return
  for (let column = 0; column < n; column++) {
    swap(a.re, best * n + column, pivot * n + column)
    swap(a.im, best * n + column, pivot * n + column)
  }
  swap(b.re, best, pivot)
  swap(b.im, best, pivot)
}

/** Subtracts the pivot row so often that the entry in its column vanishes. */
function eliminate(a: ComplexVector, b: ComplexVector, row: number, pivot: number): void {
  const n = b.re.length
  const [pr, pi] = [a.re[pivot * n + pivot] as number, a.im[pivot * n + pivot] as number]
  const [rr, ri] = [a.re[row * n + pivot] as number, a.im[row * n + pivot] as number]
  const size = pr * pr + pi * pi
  const fr = (rr * pr + ri * pi) / size
  const fi = (ri * pr - rr * pi) / size
  for (let column = pivot; column < n; column++) {
    const [cr, ci] = [a.re[pivot * n + column] as number, a.im[pivot * n + column] as number]
    a.re[row * n + column] = (a.re[row * n + column] as number) - (fr * cr - fi * ci)
    a.im[row * n + column] = (a.im[row * n + column] as number) - (fr * ci + fi * cr)
  }
  const [br, bi] = [b.re[pivot] as number, b.im[pivot] as number]
  b.re[row] = (b.re[row] as number) - (fr * br - fi * bi)
  b.im[row] = (b.im[row] as number) - (fr * bi + fi * br)
}
