/**
 * Solves A·x = b for a symmetric matrix, row by row in one array, only as long as every pivot of L·D·Lᵀ is above zero.
 *
 * @returns x, or undefined where A is not positive definite: the pivots are the proof
 */
export function positiveSolve(matrix: Float64Array, right: Float64Array): Float64Array | undefined {
  const size = right.length
  const a = new Float64Array(matrix)
  const x = new Float64Array(right)
  let largest = 0
  for (let k = 0; k < size; k++) largest = Math.max(largest, Math.abs(a[k * size + k] as number))
  for (let k = 0; k < size; k++) {
    const pivot = a[k * size + k] as number
    if (!(pivot > 1e-16 * largest)) return undefined
    for (let i = k + 1; i < size; i++) {
      const factor = (a[i * size + k] as number) / pivot
      if (factor === 0) continue
      for (let j = k + 1; j < size; j++)
        a[i * size + j] = (a[i * size + j] as number) - factor * (a[k * size + j] as number)
      x[i] = (x[i] as number) - factor * (x[k] as number)
    }
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i] as number
    for (let j = i + 1; j < size; j++) sum -= (a[i * size + j] as number) * (x[j] as number)
    x[i] = sum / (a[i * size + i] as number)
  }
  return x
}
