/** Closed forms of responses and linings that the network makes unnecessary in the service: second paths for the tests. */
import type { BandPass4 } from '../../src/domain/enclosure/alignment/band-pass-4.ts'
import type { ClosedBox } from '../../src/domain/enclosure/alignment/closed-box.ts'
import { type RationalResponse, valueAndSlope } from '../../src/domain/enclosure/alignment/rational-response.ts'
import type { LinedAir } from '../../src/domain/enclosure/model/lining.ts'

/** G(s) = s²/[(s²+s/Qtc+1)(s²+1) + αf·s²], αf = 1/(2S·Qtc)², s in units of fc. */
export function bandPass4Response({ s, qtc, centreHz }: BandPass4): RationalResponse {
  const alphaFront = 1 / (2 * s * qtc) ** 2
  return { numerator: [0, 0, 1], denominator: [1, 1 / qtc, 2 + alphaFront, 1 / qtc, 1], scaleHz: centreHz }
}

/** G(s) = s²/(s² + s/Qtc + 1), s in units of fc. */
export function closedResponse({ fcHz, qtc }: ClosedBox): RationalResponse {
  return { numerator: [0, 0, 1], denominator: [1, 1 / qtc, 1], scaleHz: fcHz }
}

interface PassiveRadiatorBox {
  /** Vas/Vb. */
  readonly alpha: number
  /** Compliance of the radiators over that of the box. */
  readonly delta: number
  /** Free resonance of the radiators over fs. */
  readonly ratio: number
  readonly qt: number
}

/**
 * Response of a driver with passive radiators, box and radiators lossless; s in units of fs, p = fP/fs.
 *
 *   G = s²(s² + p²)/[s⁴ + s³/QT + s²(α + (1+δ)p² + 1) + s·p²(1+δ)/QT + p²(1+α+δ)]
 *
 * @validity Coil inductance ignored.
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974; opening read, formula from memory and rederived
 * @check  α 1.2, δ 2.5, p 0.6, QT 0.35 at 0.8 fs → |G| 0.126053
 */
export function passiveRadiatorResponse(
  { alpha, delta, ratio, qt }: PassiveRadiatorBox,
  fsHz: number
): RationalResponse {
  const p2 = ratio ** 2
  return {
    numerator: [0, 0, p2, 0, 1],
    denominator: [p2 * (1 + alpha + delta), (p2 * (1 + delta)) / qt, alpha + (1 + delta) * p2 + 1, 1 / qt, 1],
    scaleHz: fsHz
  }
}

/**
 * Group delay, analytic.
 *
 *   τ = −dφ/dω = [Re(D′/D) − Re(N′/N)]/ω0   at s = jω/ω0
 *
 * @param frequencyHz  > 0, not on a zero of the numerator
 * @source derived: φ = arg N − arg D, d(arg D)/dω = Re(D′/D)
 * @check  fourth-order Butterworth high-pass at its corner → ω0τ = 3.69552
 */
export function groupDelayS({ numerator, denominator, scaleHz }: RationalResponse, frequencyHz: number): number {
  const x = frequencyHz / scaleHz
  return (realQuotient(denominator, x) - realQuotient(numerator, x)) / (2 * Math.PI * scaleHz)
}

/**
 * Ripple of a Chebyshev alignment: k = tanh(¼·asinh(1/ε)), dB = 10·lg(1+ε²).
 *
 * @param k  0 < k < 1
 * @source derived: the sine and cosine of an ellipse of poles, 4·atanh(k) = asinh(1/ε)
 * @check  k 0.597 → 0.0704 dB
 */
export function chebyshevRippleDb(k: number): number {
  return 10 * Math.log10(1 + 1 / Math.sinh(4 * Math.atanh(k)) ** 2)
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
export function realQuotient(coefficients: readonly number[], x: number): number {
  const { value, slope } = valueAndSlope(coefficients, x)
  return (slope.re * value.re + slope.im * value.im) / (value.re ** 2 + value.im ** 2)
}
/** Ratio of specific heats of air: the softest that air can get by exchanging heat. */

export const ISOTHERMAL_FACTOR = 1.4
