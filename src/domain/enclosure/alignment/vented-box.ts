/** The vented box in closed form: its fourth-order response from its parts, and its parts from a wanted response. */
import { bisect } from '../../../numeric/bisect.ts'
import type { RationalResponse } from './rational-response.ts'

/** s⁴ + a1 s³ + a2 s² + a3 s + 1, s in units of √(fs·fB). */
export interface VentedCoefficients {
  readonly a1: number
  readonly a2: number
  readonly a3: number
}

export interface VentedBox {
  /** fB/fs. */
  readonly h: number
  /** Vas/Vb. */
  readonly alpha: number
  /** Total Q of the driver, the source's resistance in it. */
  readonly qt: number
}

/**
 * Coefficients of the response, all box losses taken as a leak of Q QL.
 *
 *   a1 = (1/QT + h/QL)/√h   a2 = (α + 1 + h²)/h + 1/(QL·QT)   a3 = (h/QT + 1/QL)/√h
 *
 * @param lossPerQ  1/QL ≥ 0, 0 for a lossless box
 * @validity Lumped port; coil inductance ignored; the leak's flow counts as radiated.
 * @source Small, "Vented-box loudspeaker systems", JAES 21(5-8), 1973; from memory, rederived from the circuit
 * @check  QT 0.35, QL 7, α 1.5, h 1.1 → a1 2.87401, a2 3.78089, a3 3.13281
 */
export function ventedCoefficients({ h, alpha, qt }: VentedBox, lossPerQ: number): VentedCoefficients {
  const root = Math.sqrt(h)
  return {
    a1: (1 / qt + h * lossPerQ) / root,
    a2: (alpha + 1 + h ** 2) / h + lossPerQ / qt,
    a3: (h / qt + lossPerQ) / root
  }
}

/**
 * The box that has a wanted response; inverse of {@link ventedCoefficients}.
 *
 *   r⁴/QL − a1·r³ + a3·r − 1/QL = 0, the root nearest √(a3/a1)
 *   h = r²   1/QT = a1·r − r²/QL   α = a2·h − h² − 1 − h/(QL·QT)
 *
 * @returns undefined where no driver has that response with these losses
 * @source Small 1973, as above; the quartic follows by eliminating QT
 * @check  Butterworth coefficients, QL 7 → QT 0.40481, h 1, α 1.0613
 */
export function ventedBoxFor({ a1, a2, a3 }: VentedCoefficients, lossPerQ: number): VentedBox | undefined {
  const r = tuningRoot(a1, a3, lossPerQ)
  if (r === undefined) return undefined
  const h = r ** 2
  const damping = a1 * r - h * lossPerQ
  const alpha = a2 * h - h ** 2 - 1 - h * lossPerQ * damping
  return damping > 0 && Number.isFinite(alpha) ? { h, alpha, qt: 1 / damping } : undefined
}

function tuningRoot(a1: number, a3: number, lossPerQ: number): number | undefined {
  let r = Math.sqrt(a3 / a1)
  for (let round = 0; round < 60; round++) {
    const value = lossPerQ * r ** 4 - a1 * r ** 3 + a3 * r - lossPerQ
    const slope = 4 * lossPerQ * r ** 3 - 3 * a1 * r ** 2 + a3
    const step = value / slope
    r -= step
    if (!(r > 0)) return undefined
    if (Math.abs(step) <= 1e-15 * r) break
  }
  return r
}

/**
 * Half-power frequency over √(fs·fB).
 *
 *   |G|⁻² = 1 + A1·y + A2·y² + A3·y³ + y⁴ = 2, y = Ω⁻²;   the largest root (the lowest frequency), f3 = f0/√y
 *   A1 = a1² − 2a2   A2 = a2² + 2 − 2a1·a3   A3 = a3² − 2a2
 *
 * @source derived from the coefficients
 * @check  Butterworth → 1
 */
export function ventedHalfPowerRatio({ a1, a2, a3 }: VentedCoefficients): number {
  const A1 = a1 ** 2 - 2 * a2
  const A2 = a2 ** 2 + 2 - 2 * a1 * a3
  const A3 = a3 ** 2 - 2 * a2
  const excess = (y: number) => y ** 4 + A3 * y ** 3 + A2 * y ** 2 + A1 * y - 1
  // y is the inverse square of the frequency, so the lowest frequency at half power is the largest root.
  let high = 1
  while (excess(high) <= 0 && high < 1e12) high *= 2
  let low = high
  while (excess(low) > 0 && low > 1e-12) low /= 1.02
  return 1 / Math.sqrt(bisect(excess, low, Math.min(high, low * 1.02)))
}

export function ventedResponse({ a1, a2, a3 }: VentedCoefficients, fsHz: number, tuningHz: number): RationalResponse {
  return {
    numerator: [0, 0, 0, 0, 1],
    denominator: [1, a3, a2, a1, 1],
    scaleHz: Math.sqrt(fsHz * tuningHz)
  }
}
