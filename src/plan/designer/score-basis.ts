/** The score of one design as arithmetic. */

import type { Basis } from '../../contract/field/envelope.ts'
import { explain } from '../../domain/formula.ts'
import { designScore, pricedDesignScore } from './formulas.ts'
import { drawn, floored, type ScoredFigures, type Weights } from './search-score.ts'

export function scoreBasis(quantity: string, figures: ScoredFigures, weights: Weights, total: number): Basis {
  const { levelDb: L, f3Hz: f, outerVolumeM3: V, fullSineA, price } = figures
  const { level: wL, reach: wR, box: wB, current: wC, price: wP } = weights
  const given = { L, f, V, I: drawn(fullSineA), wL, wR, wB, wC }
  if (price === undefined) return explain(designScore, quantity, total, given)
  return explain(pricedDesignScore, quantity, total, { ...given, P: floored(price), wP })
}
