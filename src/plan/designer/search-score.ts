/** How designs are put in order: every figure in decibels of equal worth, weighted. */
import type { DesignFigures } from '../../contract/systems/design-system.ts'
import { rankDefaults } from './defaults.ts'

export const criteria = ['level', 'reach', 'box', 'price', 'current'] as const
type Criterion = (typeof criteria)[number]
export type Weights = Readonly<Record<Criterion, number>>

export type ScoredFigures = Pick<DesignFigures, 'levelDb' | 'f3Hz' | 'outerVolumeM3' | 'fullSineA' | 'price'>

interface Score {
  /** Weighted sum; only differences mean something. */
  readonly total: number
  /** What each figure adds to it. */
  readonly points: Omit<Weights, 'price'> & { readonly price?: number }
}

const doublings = (ratio: number) => 10 * Math.log10(ratio)

export const floored = (price: number) => Math.max(price, rankDefaults.leastPrice.value)
export const drawn = (fullSineA: number) => Math.max(fullSineA, rankDefaults.leastCurrentA.value)

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
    reach: -weights.reach * 3 * doublings(f3Hz / rankDefaults.zeroF3Hz.value),
    box: -weights.box * doublings(outerVolumeM3 / rankDefaults.zeroOuterVolumeM3.value),
    ...(price === undefined
      ? {}
      : { price: -weights.price * doublings(floored(price) / rankDefaults.zeroPrice.value) }),
    current: -weights.current * doublings(drawn(fullSineA) / rankDefaults.zeroFullSineA.value)
  }
  return { points, total: Object.values(points).reduce((sum, each) => sum + each, 0) }
}
