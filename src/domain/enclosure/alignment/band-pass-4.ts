/** The fourth-order band-pass in closed form: a closed rear chamber, a front chamber tuned to its resonance. */
import { bisect } from '../../../numeric/bisect.ts'
import { type BoxedDriver, closedPeakDb } from './closed-box.ts'

export interface BandPass4 {
  /** Damping of the prototype, ½/Q: √½ flat, less ripples, more droops. */
  readonly s: number
  /** Of the rear chamber alone. */
  readonly qtc: number
  readonly centreHz: number
  readonly rearVolumeM3: number
  readonly frontVolumeM3: number
  /** Half power re the centre. */
  readonly lowHz: number
  readonly highHz: number
  /** Level at the centre re the half-space plateau of the bare driver. */
  readonly gainDb: number
  readonly rippleDb: number
}

/**
 * Half-power frequency of the low-pass prototype of Q = 1/(2S).
 *
 *   x3 = √[(b + √(b²+4))/2],  b = 2 − 4S²
 *
 * @source derived from |H|² = ½ of the second-order low-pass
 * @check  S 0.5 → 1.27202; 0.6 → 1.14824; √½ → 1
 */
export function prototypeHalfPower(s: number): number {
  const b = 2 - 4 * s ** 2
  return Math.sqrt((b + Math.sqrt(b ** 2 + 4)) / 2)
}

/**
 * Both chambers for a shape S and a rear Qtc.
 *
 *   Vr = Vas/((Qtc/Qts)² − 1)   Vf = (2S·Qts)²·Vas   fc = fs·Qtc/Qts, the front tuned to fc
 *   edges fc·[√(Ω²/4+1) ∓ Ω/2], Ω = x3/(2S·Qtc)      gain 40·lg(2S·Qtc)
 *
 * @param s  > 0
 * @param qtc  > Qts
 * @validity Lossless chambers, front tuned to the rear resonance; coil inductance ignored.
 * @source Fincham 1979 and Geddes, JAES 37(5), 1989, from memory; rederived and held against the network
 * @check  Qts 0.39252336, Vas 55 L, S 0.6, Qtc 0.75 → front 12.2027 L, rear 20.7482 L
 */
export function bandPass4({ fsHz, qts, vasM3 }: BoxedDriver, s: number, qtc: number): BandPass4 {
  const centreHz = (fsHz * qtc) / qts
  const width = prototypeHalfPower(s) / (2 * s * qtc)
  const middle = Math.sqrt(width ** 2 / 4 + 1)
  return {
    s,
    qtc,
    centreHz,
    rearVolumeM3: vasM3 / ((qtc / qts) ** 2 - 1),
    frontVolumeM3: (2 * s * qts) ** 2 * vasM3,
    lowHz: centreHz * (middle - width / 2),
    highHz: centreHz * (middle + width / 2),
    gainDb: 40 * Math.log10(2 * s * qtc),
    rippleDb: closedPeakDb(1 / (2 * s))
  }
}

/**
 * Chambers for wanted half-power edges; inverse of {@link bandPass4}.
 *
 *   fc = √(f1·f2)   Qtc = Qts·fc/fs   x3(S)/(2S) = Qtc·(f2 − f1)/fc
 *
 * @returns undefined where the centre is not above fs, or no S from 0.2 to 2 gives the width
 */
export function bandPass4ForEdges(driver: BoxedDriver, lowHz: number, highHz: number): BandPass4 | undefined {
  const centreHz = Math.sqrt(lowHz * highHz)
  const qtc = (driver.qts * centreHz) / driver.fsHz
  if (!(centreHz > driver.fsHz)) return undefined
  const wanted = (qtc * (highHz - lowHz)) / centreHz
  const excess = (s: number) => prototypeHalfPower(s) / (2 * s) - wanted
  if (excess(0.2) < 0 || excess(2) > 0) return undefined
  return bandPass4(driver, bisect(excess, 0.2, 2), qtc)
}
