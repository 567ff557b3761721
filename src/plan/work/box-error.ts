/** What the accuracy of a way of working does to the box. */
import type { BoxLayout } from '../../contract/boxes/box-result.ts'

export interface BoxError {
  readonly netVolumePercent: number
  readonly tuningPercent?: number
}

/**
 * What cuts that are off move the air and the tuning by, at most.
 *
 *   dV/V = a·(1/W + 1/H + 1/D);   df/f = ½·(dS/S + dV/V + a/L),  dS/S = a·(w + h)/(w·h) of a slot, 0 of a tube that is bought
 *
 * @param a  how far one length may be off [m], above 0, small against the sizes
 * @param slotHeightM  smaller side of the mouth of a slot, where there is one [m]
 * @returns per cent, all errors of the worst sign at once
 * @validity a box near its block, one port or equal ones
 * @source derived: first order of V = W·H·D and f ∝ √(S/(V·L))
 * @check  1 mm on 500 × 400 × 250 mm inside: 0.85 %; slot 400 × 40 mm, 600 mm long: ½·(2.75 + 0.85 + 0.167) = 1.88 %, by hand
 */
export function boxError(
  a: number,
  { inner, port }: Pick<BoxLayout, 'inner' | 'port'>,
  slotHeightM?: number
): BoxError {
  const air = a / inner.widthM + a / inner.heightM + a / inner.depthM
  if (port === undefined) return { netVolumePercent: 100 * air }
  const mouth = slotHeightM === undefined ? 0 : a / slotHeightM + (a * slotHeightM) / port.areaM2
  return { netVolumePercent: 100 * air, tuningPercent: 50 * (mouth + air + a / port.lengthM) }
}
