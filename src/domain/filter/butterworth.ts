/** Pole pairs of the Butterworth and Linkwitz-Riley low-pass with corner 1. */
import type { PrototypePole } from './filter.ts'

/**
 * Butterworth poles lie equally spaced on the unit circle; half power (−3.01 dB) at the corner.
 *
 *   Q_k = 1/(2 cos θ_k),  θ_k = π(2k − 1)/(2n) from the negative real axis for even n, πk/n for odd n
 *
 * @param order 1 … 8
 * @source Butterworth, On the theory of filter amplifiers, Wireless Engineer 7, 1930 (from memory); Q as in Zverev 1967 (from memory)
 * @check  order 4 → Q 0.5412 and 1.3066
 */
export function butterworthPoles(order: number): readonly PrototypePole[] {
  const pairs = Array.from({ length: Math.floor(order / 2) }, (_, index) => {
    const angle = order % 2 === 0 ? (Math.PI * (2 * index + 1)) / (2 * order) : (Math.PI * (index + 1)) / order
    return { corner: 1, q: 1 / (2 * Math.cos(angle)) }
  })
  return order % 2 === 0 ? pairs : [{ corner: 1 }, ...pairs]
}

/**
 * Linkwitz-Riley of order 2n: a Butterworth of order n twice; −6.02 dB at the corner, low- and high-pass add up to an all-pass.
 *
 * @param order even, 2 … 8
 * @source Linkwitz, Active crossover networks for noncoincident drivers, JAES 24(1), 1976 (from memory)
 * @check  order 4 → Q 0.7071 twice; order 2 → Q 0.5
 */
export function linkwitzRileyPoles(order: number): readonly PrototypePole[] {
  const half = butterworthPoles(order / 2)
  const pairs = half.filter(({ q }) => q !== undefined)
  const realPoles = half.length - pairs.length
  return [...(realPoles === 1 ? [{ corner: 1, q: 0.5 }] : []), ...pairs, ...pairs]
}
