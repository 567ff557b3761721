/** What a chain of sections does to a sine. */
import type { FilterSection } from './filter.ts'

interface Transfer {
  readonly re: number
  readonly im: number
  /** d ln|H|/dω [s], analytic. */
  readonly logSlopeS: number
  /** −dφ/dω [s], analytic. */
  readonly groupDelayS: number
}

/**
 * Product of the sections at one frequency, its group delay and the slope of its magnitude.
 *
 *   d ln H/dω = Σ (N'/N − D'/D)/ω_c = d ln|H|/dω − jτ,  s = jx, x = f/f_c, ' = d/dx
 *
 * @param frequencyHz  above 0
 * @source derived: the phase of a quotient is the difference of the phases
 * @check  a Butterworth low-pass of order 2 at its corner → −3.0103 dB, −90°, ω_c·τ = √2
 */
export function chainTransfer(sections: readonly FilterSection[], frequencyHz: number): Transfer {
  let re = 1
  let im = 0
  let logSlopeS = 0
  let groupDelayS = 0
  for (const { cornerHz, numerator, denominator } of sections) {
    const x = frequencyHz / cornerHz
    const upRe = numerator[0] - numerator[2] * x * x
    const upIm = numerator[1] * x
    const upSquare = upRe * upRe + upIm * upIm
    const downRe = denominator[0] - denominator[2] * x * x
    const downIm = denominator[1] * x
    const downSquare = downRe * downRe + downIm * downIm
    const quotientRe = (upRe * downRe + upIm * downIm) / downSquare
    const quotientIm = (upIm * downRe - upRe * downIm) / downSquare
    const product = re * quotientRe - im * quotientIm
    im = re * quotientIm + im * quotientRe
    re = product
    const omega = 2 * Math.PI * cornerHz
    const turnUp = (numerator[1] * upRe + 2 * numerator[2] * x * upIm) / upSquare
    const turnDown = (denominator[1] * downRe + 2 * denominator[2] * x * downIm) / downSquare
    const riseUp = (numerator[1] * upIm - 2 * numerator[2] * x * upRe) / upSquare
    const riseDown = (denominator[1] * downIm - 2 * denominator[2] * x * downRe) / downSquare
    groupDelayS += (turnDown - turnUp) / omega
    logSlopeS += (riseUp - riseDown) / omega
  }
  return { re, im, logSlopeS, groupDelayS }
}

/** |H| of the chain. */
export function chainGain(sections: readonly FilterSection[], frequencyHz: number): number {
  const { re, im } = chainTransfer(sections, frequencyHz)
  return Math.hypot(re, im)
}
