/** What fibre in a box does to the air: slower heat makes it softer, and some of the sound is lost. */

import type { LiningAmount } from '../../../contract/enclosures/words.ts'
import type { Rule } from '../../default.ts'

/** Ratio of specific heats of air: the softest that air can get by exchanging heat. */
export const ISOTHERMAL_FACTOR = 1.4

interface LinedAir {
  /** Apparent over actual air volume, 1 … 1.4. */
  readonly volumeFactor: number
  /** Q of the absorption, in series with the compliance. */
  readonly absorptionQ: number
}

/**
 * Air that exchanges heat with fibre at one time constant.
 *
 *   C(ω)/C = 1 + (γ−1)/(1 + jωτ)     volume factor Re, Q = −Re/Im
 *
 * @param frequencyHz  > 0
 * @param timeConstantS  τ [s] > 0: small for dense, fine fibre (isothermal), large for none (adiabatic)
 * @validity Fibre at rest, filling the volume; its own solid volume is to be taken off. Gives 1.4 for τ → 0, 1 for τ → ∞.
 * @source Leach, "Electroacoustic-analogous circuit models for filled enclosures", JAES 37, 1989, and Putland 1994; from memory
 * @check  ωτ = 1 → factor 1.2, Q 6
 */
export function fibreAir(frequencyHz: number, timeConstantS: number): LinedAir {
  const x = 2 * Math.PI * frequencyHz * timeConstantS
  const excess = ISOTHERMAL_FACTOR - 1
  const real = 1 + excess / (1 + x ** 2)
  const imaginary = (excess * x) / (1 + x ** 2)
  return { volumeFactor: real, absorptionQ: real / imaginary }
}

export const volumeRule = ({ range }: { readonly range: readonly [number, number] }): Rule => ({
  why: `${range.map(limit => limit.toFixed(2)).join(' to ')} in practice (no source)`,
  source: 'practice'
})

export const absorptionRule = (amount: LiningAmount | undefined): Rule => ({
  why: `lining: ${amount} (practice, no source)`,
  source: 'practice'
})

/**
 * What builders may count on. Common practice, no source: lined walls 1.05 to 1.10, a filled box 1.10 to 1.25 and a Q of 5 to 10;
 * a bare box keeps several hundred against heat, about 100 in all.
 */
export const usualLining: Readonly<Record<LiningAmount, LinedAir & { readonly range: readonly [number, number] }>> = {
  bare: { volumeFactor: 1, absorptionQ: 100, range: [1, 1] },
  walls: { volumeFactor: 1.05, absorptionQ: 40, range: [1.05, 1.1] },
  filled: { volumeFactor: 1.15, absorptionQ: 10, range: [1.1, 1.25] }
}
