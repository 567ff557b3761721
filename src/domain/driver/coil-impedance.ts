/** Impedance of a blocked coil over frequency, with its derivative by ω. */
import type { ComplexColumn } from '../../numeric/linear/complex-column.ts'
import type { Coil, CoilCell } from './driver.ts'

function addCell(
  into: ComplexColumn,
  omegas: Float64Array,
  count: number,
  { inductanceH: le, parallelOhm: rp }: CoilCell
) {
  const { re, im, dre, dim } = into
  if (rp === Number.POSITIVE_INFINITY) {
    for (let k = 0; k < count; k++) {
      im[k] = (im[k] as number) + (omegas[k] as number) * le
      dim[k] = (dim[k] as number) + le
    }
    return
  }
  for (let k = 0; k < count; k++) {
    const x = (omegas[k] as number) * le
    const ratio = x / rp
    const share = 1 / (1 + ratio * ratio)
    const slope = le * share * share
    re[k] = (re[k] as number) + x * ratio * share
    im[k] = (im[k] as number) + x * share
    dre[k] = (dre[k] as number) + 2 * ratio * slope
    dim[k] = (dim[k] as number) + (1 - ratio * ratio) * slope
  }
}

function addPowerLaw(into: ComplexColumn, omegas: Float64Array, count: number, factor: number, exponent: number) {
  const cosine = factor * Math.cos((exponent * Math.PI) / 2)
  const sine = factor * Math.sin((exponent * Math.PI) / 2)
  for (let k = 0; k < count; k++) {
    const omega = omegas[k] as number
    const power = omega ** exponent
    const slope = (exponent * power) / omega
    into.re[k] = (into.re[k] as number) + cosine * power
    into.im[k] = (into.im[k] as number) + sine * power
    into.dre[k] = (into.dre[k] as number) + cosine * slope
    into.dim[k] = (into.dim[k] as number) + sine * slope
  }
}

/**
 * Ze(ω) of a coil at rest.
 *
 *   Ze = Re + Σ jωL∥R  or  Ze = Re + K·(jω)^n
 *
 * @param omegas  angular frequencies [rad/s] > 0
 * @param scale  of the whole impedance, for coils joined in series and parallel
 * @source power law: Leach, "Loudspeaker voice-coil inductance losses", JAES 50(6), 2002 (abstract read); n = 0.5: Vanderkooy 1989 (second-hand)
 * @check  K 0.05, n 0.6, 80 Hz → 1.2273 + j1.6892 Ω above Re
 */
export function coilImpedance(
  into: ComplexColumn,
  omegas: Float64Array,
  count: number,
  coil: Coil,
  scale: number
): void {
  into.re.fill(coil.reOhm * scale, 0, count)
  into.im.fill(0, 0, count)
  into.dre.fill(0, 0, count)
  into.dim.fill(0, 0, count)
  for (const { inductanceH, parallelOhm } of coil.cells) {
    addCell(into, omegas, count, { inductanceH: inductanceH * scale, parallelOhm: parallelOhm * scale })
  }
  if (coil.powerLaw !== undefined)
    addPowerLaw(into, omegas, count, coil.powerLaw.factor * scale, coil.powerLaw.exponent)
}
