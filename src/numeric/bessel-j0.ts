/** Bessel function of order nought by its power series; for |x| ≤ 20, beyond which cancellation eats the digits. */
export function besselJ0(x: number): number {
  const quarter = (x * x) / 4
  let term = 1
  let sum = 1
  for (let k = 1; k < 80; k++) {
    term *= -quarter / (k * k)
    sum += term
    if (Math.abs(term) < 1e-18) break
  }
  return sum
}
