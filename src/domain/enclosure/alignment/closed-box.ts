/** The closed box in closed form. */
import { DesignError, requirePositive } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'

/** What an alignment asks of the drivers: all of them together, the source's resistance in the Q. */
export interface BoxedDriver {
  readonly fsHz: number
  readonly qts: number
  readonly vasM3: number
}

export interface ClosedBox {
  readonly alpha: number
  readonly fcHz: number
  readonly qtc: number
}

/**
 * Resonance and damping of a driver in a closed box.
 *
 *   α = Vas/Vb   fc = fs·√(1+α)   Qtc = Qts·√(1+α)
 *
 * @param netVolumeM3  Vb [m³] > 0: air volume, after everything inside is taken off
 * @throws DesignError `not-positive`
 * @validity Lossless box; coil inductance ignored.
 * @source Small, "Closed-box loudspeaker systems", JAES 20(10) and 21(1), 1972/73; from memory, rederived
 * @check  fs 30, Qts 0.412844, Vas 60 L, Vb 30 L → α 2, fc 51.9615, Qtc 0.715067
 */
export function closedBox({ fsHz, qts, vasM3 }: BoxedDriver, netVolumeM3: number): ClosedBox {
  requirePositive('netVolumeM3', netVolumeM3, 'm³')
  const alpha = vasM3 / netVolumeM3
  const rise = Math.sqrt(1 + alpha)
  return { alpha, fcHz: fsHz * rise, qtc: qts * rise }
}

/**
 * The volume that gives a wanted Qtc; inverse of {@link closedBox}.
 *
 *   Vb = Vas/((Qtc/Qts)² − 1)
 *
 * @throws DesignError `out-of-range` where Qtc ≤ Qts: a box can only raise it
 * @source Small 1972, as above
 * @check  Qtc 0.70710678, Qts 0.412844, Vas 60 L → 31.0305 L
 */
export function closedBoxVolumeM3({ qts, vasM3 }: Pick<BoxedDriver, 'qts' | 'vasM3'>, qtc: number): number {
  if (!(qtc > qts)) {
    throw new DesignError('out-of-range', {
      field: 'wanted.qtc',
      value: qtc,
      minimum: qts,
      unit: '1',
      detail: say('refused.a-closed-box-can-only-raise', { qts: toDigits(qts, 4), qtc: toDigits(qtc, 4) })
    })
  }
  return vasM3 / ((qtc / qts) ** 2 - 1)
}

/**
 * Half-power frequency over fc.
 *
 *   f3/fc = √[(b + √(b²+4))/2],  b = 1/Qtc² − 2
 *
 * @param qtc  > 0
 * @source Small 1972, as above
 * @check  Qtc 0.5 → 1.55377; 0.707107 → 1; 1.1 → 0.756747
 */
export function closedHalfPowerRatio(qtc: number): number {
  const b = 1 / qtc ** 2 - 2
  return Math.sqrt((b + Math.sqrt(b ** 2 + 4)) / 2)
}

/**
 * Peak of the response above its reference; none up to Qtc 1/√2.
 *
 *   Qtc²/√(Qtc² − ¼)
 *
 * @source Small 1972, as above
 * @check  Qtc 1 → 1.2494 dB
 */
export function closedPeakDb(qtc: number): number {
  return qtc ** 2 <= 0.5 ? 0 : 20 * Math.log10(qtc ** 2 / Math.sqrt(qtc ** 2 - 0.25))
}
