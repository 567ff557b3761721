/** American wire gauge: designation to diameter and area of the solid conductor. */
import { INCH_M } from '../../constants.ts'
import { DesignError } from '../../design-error.ts'

/** Defining sizes: 36 AWG is 0.005 in, 4/0 AWG (n = −3) is 0.46 in, 39 equal ratios apart. */
const SMALLEST = { gauge: 36, diameterM: 0.005 * INCH_M }
const RATIO = 92
const STEPS = 39

/**
 * @param designation  '40' … '1', '1/0' … '4/0' ('0', '00', '000', '0000' mean the same four)
 * @returns gauge number n: 1/0 is 0, 4/0 is −3; undefined for anything else
 */
export function awgNumber(designation: string): number | undefined {
  const naught = /^([1-4])\/0$/.exec(designation)
  if (naught !== null) return 1 - Number(naught[1])
  if (/^0{1,4}$/.test(designation)) return 1 - designation.length
  const gauge = Number(designation)
  return /^[1-9]\d?$/.test(designation) && gauge <= 40 ? gauge : undefined
}

/**
 * Diameter of the solid round conductor.
 *
 *   d = 0.005 in · 92^((36 − n)/39)
 *
 * @param gauge  AWG number n, whole, −3 (4/0) … 40
 * @returns diameter [m]
 * @throws DesignError `out-of-range`
 * @validity A stranded cable of the same gauge has the same metal area and a larger outside.
 * @source ASTM B258, nominal diameters and areas of AWG sizes of solid round wire (formula second-hand)
 * @check  10 AWG → 2.5882 mm; 4/0 → 11.684 mm
 */
export function awgDiameter(gauge: number): number {
  if (!Number.isInteger(gauge) || gauge < -3 || gauge > 40) {
    throw new DesignError('out-of-range', { field: 'gauge', value: gauge, minimum: -3, maximum: 40 })
  }
  return SMALLEST.diameterM * RATIO ** ((SMALLEST.gauge - gauge) / STEPS)
}

/**
 * Metal area of a gauge.
 *
 *   A = π·d²/4
 *
 * @param gauge  AWG number n, whole, −3 … 40
 * @returns area [m²]
 * @throws DesignError `out-of-range`
 * @validity as {@link awgDiameter}
 * @source ASTM B258, as above
 * @check  4 AWG → 21.151 mm²
 */
export function awgArea(gauge: number): number {
  return (Math.PI * awgDiameter(gauge) ** 2) / 4
}
