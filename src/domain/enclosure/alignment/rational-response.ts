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
export function valueAndSlope(coefficients: readonly number[], x: number): { value: Value; slope: Value } {
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
