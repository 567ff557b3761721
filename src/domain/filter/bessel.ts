/** Pole pairs of the Bessel low-pass whose half-power corner is 1. */
import { polynomialRoots } from '../../numeric/polynomial-roots.ts'
import type { PrototypePole } from './filter.ts'

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1)
}

/**
 * Coefficients of the reverse Bessel polynomial, ascending.
 *
 *   c_k = (2n − k)!/(2^(n−k) k! (n − k)!)
 *
 * @param order 1 … 8
 * @source Thomson, Delay networks having maximally flat frequency characteristics, Proc. IEE 96 III, 1949 (from memory);
 *   the formula as a public reference of a modelling language prints it (read)
 * @check  order 3 → 15, 15, 6, 1
 */
export function besselPolynomial(order: number): readonly number[] {
  return Array.from(
    { length: order + 1 },
    (_, k) => factorial(2 * order - k) / (2 ** (order - k) * factorial(k) * factorial(order - k))
  )
}

/** |θ(jω)|² for poles on and off the real axis. */
function squareAt(coefficients: readonly number[], omega: number): number {
  let re = 0
  let im = 0
  for (const [power, coefficient] of coefficients.entries()) {
    const term = coefficient * omega ** power
    if (power % 2 === 0) re += power % 4 === 0 ? term : -term
    else im += power % 4 === 1 ? term : -term
  }
  return re * re + im * im
}

/**
 * Where the delay-normalised low-pass has half power; the magnitude falls steadily, so halving the interval is safe.
 *
 * @source derived from the polynomial
 * @check  order 4 → 2.1139
 */
export function besselHalfPower(order: number): number {
  const coefficients = besselPolynomial(order)
  const target = 2 * squareAt(coefficients, 0)
  let low = 0
  let high = 10
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2
    if (squareAt(coefficients, middle) < target) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Bessel low-pass, scaled so that its corner has half power (−3.01 dB).
 *
 * @param order 1 … 8
 * @source as {@link besselPolynomial}
 * @check  order 4 → Q 0.5219 and 0.8055
 */
export function besselPoles(order: number): readonly PrototypePole[] {
  const halfPower = besselHalfPower(order)
  const tolerance = 1e-9
  return polynomialRoots(besselPolynomial(order))
    .filter(({ im }) => im > -tolerance)
    .map(({ re, im }) => {
      const distance = Math.hypot(re, im)
      const corner = distance / halfPower
      return im < tolerance ? { corner } : { corner, q: distance / (-2 * re) }
    })
    .sort((one, other) => (one.q ?? 0) - (other.q ?? 0))
}
