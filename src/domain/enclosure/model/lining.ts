/** What fibre in a box does to the air: slower heat makes it softer, and some of the sound is lost. */

import type { LiningAmount } from '../../../contract/enclosures/words.ts'
import type { Rule } from '../../default.ts'

export interface LinedAir {
  /** Apparent over actual air volume, 1 … 1.4. */
  readonly volumeFactor: number
  /** Q of the absorption, in series with the compliance. */
  readonly absorptionQ: number
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
