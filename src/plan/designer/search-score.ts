/** How designs are put in order: every figure in decibels of equal worth, weighted. */

export const criteria = ['level', 'reach', 'box', 'price', 'current'] as const
export type Criterion = (typeof criteria)[number]
export type Weights = Readonly<Record<Criterion, number>>

export interface ScoredFigures {
  readonly levelDb: number
  readonly f3Hz: number
  readonly outerVolumeM3: number
  readonly fullSineA: number
  readonly price?: number
}

interface Score {
  /** Weighted sum; only differences mean something. */
  readonly total: number
  /** What each figure adds to it. */
  readonly points: Omit<Weights, 'price'> & { readonly price?: number }
}

/** Where each figure gives no points; moves all designs alike. */
const zeroAt = { f3Hz: 30, outerVolumeM3: 0.1, price: 1000, fullSineA: 50 } as const

/** Parts at hand cost nothing; below one unit of any currency two systems cost the same. */
const LEAST_PRICE = 1
/** Below a milliampere nothing is drawn. */
const LEAST_CURRENT_A = 1e-3

const doublings = (ratio: number) => 10 * Math.log10(ratio)

export const floored = (price: number) => Math.max(price, LEAST_PRICE)
export const drawn = (fullSineA: number) => Math.max(fullSineA, LEAST_CURRENT_A)

/**
 * Decibels that a figure is worth before its weight.
 *
 *   level     L                      1 a decibel
 *   reach     −30·log10(f3/30 Hz)    9 an octave: η0 ∝ f3³
 *   box       −10·log10(V/100 L)     3 a doubling: η0 ∝ V
 *   price     −10·log10(P/1000)      3 a doubling, as of power
 *   current   −10·log10(I/50 A)      3 a doubling, as of power
 *
 * @param figures  f3Hz, outerVolumeM3 > 0
 * @validity an order of preference, no physics of the single design
 * @source η0 = k·f3³·V: Small, "Closed-box loudspeaker systems", JAES 20(10), 1972 (from memory); price and current as power: ours
 * @check  f3 60 → 30 Hz: +9.03; twice the volume, price or current: −3.01 each
 */
export function pointsOf(figures: ScoredFigures, weights: Weights): Score {
  const { levelDb, f3Hz, outerVolumeM3, fullSineA, price } = figures
  const points = {
    level: weights.level * levelDb,
    reach: -weights.reach * 3 * doublings(f3Hz / zeroAt.f3Hz),
    box: -weights.box * doublings(outerVolumeM3 / zeroAt.outerVolumeM3),
    ...(price === undefined ? {} : { price: -weights.price * doublings(floored(price) / zeroAt.price) }),
    current: -weights.current * doublings(drawn(fullSineA) / zeroAt.fullSineA)
  }
  return { points, total: Object.values(points).reduce((sum, each) => sum + each, 0) }
}
