/** A response as a quotient of two polynomials in s: its level and its group delay. */

export interface RationalResponse {
  /** Coefficients of s⁰, s¹, … with s = jf/scaleHz. */
  readonly numerator: readonly number[]
  readonly denominator: readonly number[]
  readonly scaleHz: number
}

interface Value {
  readonly re: number
  readonly im: number
}

/** p(jx) and dp/ds there, by Horner's rule. */
function valueAndSlope(coefficients: readonly number[], x: number): { value: Value; slope: Value } {
  let [re, im, slopeRe, slopeIm] = [0, 0, 0, 0]
  for (let power = coefficients.length - 1; power >= 0; power--) {
    ;[slopeRe, slopeIm] = [re - x * slopeIm, im + x * slopeRe]
    ;[re, im] = [(coefficients[power] ?? 0) - x * im, x * re]
  }
  return { value: { re, im }, slope: { re: slopeRe, im: slopeIm } }
}

/** |G| in dB; the limit far above every pole is the reference of a high-pass whose leading coefficients are 1. */
export function levelDb({ numerator, denominator, scaleHz }: RationalResponse, frequencyHz: number): number {
  const x = frequencyHz / scaleHz
  const over = valueAndSlope(numerator, x).value
  const under = valueAndSlope(denominator, x).value
  return 10 * Math.log10((over.re ** 2 + over.im ** 2) / (under.re ** 2 + under.im ** 2))
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

function realQuotient(coefficients: readonly number[], x: number): number {
  const { value, slope } = valueAndSlope(coefficients, x)
  return (slope.re * value.re + slope.im * value.im) / (value.re ** 2 + value.im ** 2)
}
