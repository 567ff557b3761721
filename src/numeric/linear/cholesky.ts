/** Symmetric positive definite systems, row by row in one array. */

/** Pivots below this share of the largest element of the diagonal are rounding. */
const NO_PIVOT = 1e-16

/** Lower factor L of A = L·Lᵀ, or undefined where A is not positive definite: the pivots are the proof. */
export function choleskyFactor(matrix: Float64Array, size: number): Float64Array | undefined {
  const lower = new Float64Array(matrix)
  let largest = 0
  for (let k = 0; k < size; k++) largest = Math.max(largest, Math.abs(lower[k * size + k] as number))
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = lower[i * size + j] as number
      for (let k = 0; k < j; k++) sum -= (lower[i * size + k] as number) * (lower[j * size + k] as number)
      if (i === j && !(sum > NO_PIVOT * largest)) return undefined
      lower[i * size + j] = i === j ? Math.sqrt(sum) : sum / (lower[j * size + j] as number)
    }
  }
  return lower
}

/** x of L·Lᵀ·x = b. */
export function choleskySolve(lower: Float64Array, size: number, right: Float64Array): Float64Array {
  const x = new Float64Array(right)
  for (let i = 0; i < size; i++) {
    let sum = x[i] as number
    for (let k = 0; k < i; k++) sum -= (lower[i * size + k] as number) * (x[k] as number)
    x[i] = sum / (lower[i * size + i] as number)
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i] as number
    for (let k = i + 1; k < size; k++) sum -= (lower[k * size + i] as number) * (x[k] as number)
    x[i] = sum / (lower[i * size + i] as number)
  }
  return x
}
