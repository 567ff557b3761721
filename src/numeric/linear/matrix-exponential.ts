/** e^A of a small real matrix. */

/** Row by row, n × n. */
type Matrix = Float64Array

export function multiplyMatrices(a: Matrix, b: Matrix, n: number): Matrix {
  const product = new Float64Array(n * n)
  for (let row = 0; row < n; row++) {
    for (let inner = 0; inner < n; inner++) {
      const factor = a[row * n + inner] as number
      if (factor === 0) continue
      for (let column = 0; column < n; column++) {
        product[row * n + column] = (product[row * n + column] as number) + factor * (b[inner * n + column] as number)
      }
    }
  }
  return product
}

/** Largest row sum of moduli. */
function norm(a: Matrix, n: number): number {
  let largest = 0
  for (let row = 0; row < n; row++) {
    let sum = 0
    for (let column = 0; column < n; column++) sum += Math.abs(a[row * n + column] as number)
    largest = Math.max(largest, sum)
  }
  return largest
}

const TERMS = 18

/**
 * Scaling and squaring of the Taylor series.
 *
 *   e^A = (Σ (A/2^s)^k/k!)^(2^s)   with ‖A/2^s‖ ≤ ½
 *
 * @source Moler & Van Loan, "Nineteen dubious ways to compute the exponential of a matrix", SIAM Rev. 20(4), 1978, method 3 (from memory)
 * @check  [[0, −1], [1, 0]]·π/3 → a turn by 60°
 */
export function matrixExponential(a: Matrix, n: number): Matrix {
  const squarings = Math.max(0, Math.ceil(Math.log2(2 * norm(a, n) || 1)))
  const scaled = a.map(value => value / 2 ** squarings)
  const identity = new Float64Array(n * n)
  for (let k = 0; k < n; k++) identity[k * n + k] = 1
  let sum: Matrix = identity
  for (let term = TERMS; term >= 1; term--) {
    const next = multiplyMatrices(scaled, sum, n)
    for (let k = 0; k < n * n; k++) next[k] = (next[k] as number) / term + (identity[k] as number)
    sum = next
  }
  for (let k = 0; k < squarings; k++) sum = multiplyMatrices(sum, sum, n)
  return sum
}
