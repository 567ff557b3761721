/** A quick power-law fit to flat vented boxes, as a second opinion beside the exact solution. */
import type { BoxedDriver } from './closed-box.ts'

interface FittedBox {
  readonly netVolumeM3: number
  readonly tuningHz: number
  readonly f3Hz: number
}

/**
 * Fit for box losses of about QL 7.
 *
 *   Vb = 20·Qts^3.3·Vas   fB = fs·(Vas/Vb)^0.31   f3 = 0.28·fs·Qts^−1.4
 *
 * @validity 0.25 ≤ Qts ≤ 0.6: against the exact flat solution −6 … +12 % (Vb), −2 … +4.5 % (fB), ±5 % (f3).
 * @source Margolis & Small, JAES 29(6), 1981, or Keele; from memory, which exponents belong to which author was not confirmed
 * @check  Qts 0.3 → Vb/Vas 0.3763
 */
export function flatBoxFit({ fsHz, qts, vasM3 }: BoxedDriver): FittedBox {
  const share = 20 * qts ** 3.3
  return { netVolumeM3: share * vasM3, tuningHz: fsHz * share ** -0.31, f3Hz: 0.28 * fsHz * qts ** -1.4 }
}
