/** The families of vented alignments: the response each aims at, and the box that gives it to a driver with the losses at hand. */
import { bisect } from '../../../numeric/bisect.ts'
import { type VentedBox, type VentedCoefficients, ventedBoxFor } from './vented-box.ts'

/** By the total Q of the driver they suit, from strongly to lightly damped. */
export const ventedFamilies = ['sbb4', 'sc4', 'be4', 'qb3', 'b4', 'c4'] as const
export type VentedFamily = (typeof ventedFamilies)[number]

/** Share of QT within which a driver counts as the one a single-valued alignment (B4, BE4) asks for. Ours. */
const SAME_QT = 0.01

/** Maximally flat, fourth order: a1 = a3 = √(4+2√2), a2 = 2+√2 (Butterworth; Thiele 1961, from memory, rederived). */
export const butterworth4: VentedCoefficients = {
  a1: Math.sqrt(4 + 2 * Math.SQRT2),
  a2: 2 + Math.SQRT2,
  a3: Math.sqrt(4 + 2 * Math.SQRT2)
}

/**
 * Flattest group delay, fourth order: s⁴+10s³+45s²+105s+105 turned high-pass and scaled so that the ends are 1.
 *
 *   a1 = 105/105^¾   a2 = 45/105^½   a3 = 10/105^¼
 *
 * @check  lossless: QT 1/√10, α 7/3
 */
export const bessel4: VentedCoefficients = {
  a1: 105 / 105 ** 0.75,
  a2: 45 / 105 ** 0.5,
  a3: 10 / 105 ** 0.25
}

/**
 * Quasi third order: the first two terms of |G|⁻² − 1 vanish (A1 = A2 = 0).
 *
 *   a2 = a1²/2   a3 = (a2² + 2)/(2·a1)
 *
 * @param a1  ≥ √(4+2√2), where it is B4; grows as QT falls
 * @source Thiele, Proc. IREE Aust. 22, 1961 (JAES 19(5), 1971) and Small 1973, from memory; rederived
 * @check  QT 0.3, QL 7 → h 1.3145, α 2.8452
 */
function quasiThirdOrder(a1: number): VentedCoefficients {
  const a2 = a1 ** 2 / 2
  return { a1, a2, a3: (a2 ** 2 + 2) / (2 * a1) }
}

/**
 * Poles of the Butterworth response moved onto an ellipse: Chebyshev (C4, ripple) for k < 1, sub-Chebyshev (SC4) for k > 1.
 *
 *   D = (k⁴+6k²+1)/8   a3 = k·√(4+2√2)/D^¼   a2 = [1+k²(1+√2)]/√D   a1 = (a3/√D)·[1 − (1−k²)/(2√2)]
 *
 * @param k  > 0; 1 is B4
 * @source Thiele 1961 and Small 1973 (C4), Bullock 1980 to 1981 (SC4), from memory; rederived from the pole ellipse
 * @check  QT 0.45, QL 7 → k 0.7608, h 0.89925, α 0.68677, ripple 0.00592 dB
 */
export function poleEllipse(k: number): VentedCoefficients {
  const d = (k ** 4 + 6 * k ** 2 + 1) / 8
  const a3 = (k * Math.sqrt(4 + 2 * Math.SQRT2)) / d ** 0.25
  const a2 = (1 + k ** 2 * (1 + Math.SQRT2)) / Math.sqrt(d)
  const a1 = (a3 / Math.sqrt(d)) * (1 - (1 - k ** 2) / (2 * Math.SQRT2))
  return { a1, a2, a3 }
}

/**
 * Tuned to the driver's own resonance (h = 1) with coincident pole pairs: the best damped step for its size.
 *
 *   α = ¼·(1/QT + 1/QL)² − 1/(QL·QT)
 *
 * @validity Flat only up to QT ≈ 0.35; above, the response peaks.
 * @source W. J. J. Hoge, JAES 25(6), 1977, from memory; the definition is inferred, not confirmed from the original
 * @check  QT 0.3, QL 7 → α 2.5448
 */
function coincidentPoles(qt: number, lossPerQ: number): VentedBox {
  return { h: 1, alpha: (1 / qt + lossPerQ) ** 2 / 4 - lossPerQ / qt, qt }
}

/** QT that the maximally flat response asks for: lossless 0.38268, QL 7 0.40481. */
export function flatTotalQ(lossPerQ: number): number {
  return ventedBoxFor(butterworth4, lossPerQ)?.qt ?? Number.NaN
}

/** Ends of the free parameter of a family; QT falls as it grows. */
const spans = {
  qb3: { shape: quasiThirdOrder, from: butterworth4.a1, to: 60 },
  c4: { shape: poleEllipse, from: 0.12, to: 1 },
  sc4: { shape: poleEllipse, from: 1, to: 1e3 }
} as const

function spanBox(family: keyof typeof spans, qt: number, lossPerQ: number): VentedBox | undefined {
  const { shape, from, to } = spans[family]
  const boxAt = (parameter: number) => ventedBoxFor(shape(parameter), lossPerQ)
  const excess = (parameter: number) => (boxAt(parameter)?.qt ?? Number.POSITIVE_INFINITY) - qt
  if (!(excess(from) >= 0 && excess(to) <= 0)) return undefined
  return boxAt(bisect(excess, from, to))
}

function singleBox(shape: VentedCoefficients, qt: number, lossPerQ: number): VentedBox | undefined {
  const box = ventedBoxFor(shape, lossPerQ)
  return box !== undefined && Math.abs(box.qt / qt - 1) <= SAME_QT ? { ...box, qt } : undefined
}

/**
 * The box of a family for a driver of a given QT, solved for the losses at hand.
 *
 * @param qt  total Q, the source's resistance in it, > 0
 * @param lossPerQ  1/QL ≥ 0
 * @returns undefined where the family has no member for that QT; α may come out ≤ 0, for the caller to judge
 */
export function familyBox(family: VentedFamily, qt: number, lossPerQ: number): VentedBox | undefined {
  if (family === 'b4') return singleBox(butterworth4, qt, lossPerQ)
  if (family === 'be4') return singleBox(bessel4, qt, lossPerQ)
  if (family === 'sbb4') return coincidentPoles(qt, lossPerQ)
  return spanBox(family, qt, lossPerQ)
}
