/** Small dense real systems. */

/**
 * Solves A·x = b by elimination with partial pivoting; A and b are overwritten, b with the solution.
 *
 * @param a  row by row, n × n, not singular
 */
export function solveReal(a: Float64Array, b: Float64Array): void {
  const n = b.length
  for (let pivot = 0; pivot < n; pivot++) {
    let best = pivot
    for (let row = pivot + 1; row < n; row++) {
      if (Math.abs(a[row * n + pivot] as number) > Math.abs(a[best * n + pivot] as number)) best = row
    }
    for (let column = pivot; best !== pivot && column < n; column++) swap(a, best * n + column, pivot * n + column)
    if (best !== pivot) swap(b, best, pivot)
    for (let row = pivot + 1; row < n; row++) {
      const factor = (a[row * n + pivot] as number) / (a[pivot * n + pivot] as number)
      if (factor === 0) continue
      for (let column = pivot; column < n; column++) {
        a[row * n + column] = (a[row * n + column] as number) - factor * (a[pivot * n + column] as number)
      }
      b[row] = (b[row] as number) - factor * (b[pivot] as number)
    }
  }
  for (let row = n - 1; row >= 0; row--) {
    let rest = b[row] as number
    for (let column = row + 1; column < n; column++) rest -= (a[row * n + column] as number) * (b[column] as number)
    b[row] = rest / (a[row * n + row] as number)
  }
}

function swap(values: Float64Array, one: number, other: number): void {
  const held = values[one] as number
  values[one] = values[other] as number
  values[other] = held
}
