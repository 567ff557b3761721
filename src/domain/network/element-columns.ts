/** Admittances of chambers and branches over a block of angular frequencies, each with its derivative by ω. */
import type { ComplexColumn } from '../../numeric/linear/complex-column.ts'
import type { Branch, Chamber } from './network.ts'

/** A lossless branch with mass and stiffness would be a perfect short at its own resonance; this Q keeps it finite, and below every printed digit. */
const HIGHEST_Q = 1e13

/**
 * Admittance of a chamber.
 *
 *   y = jωC/(1 + jωCR)    y' = jC/(1 + jωCR)²
 *
 * @source Small, "Vented-box loudspeaker systems", JAES 21(5), 1973: absorption in series with the compliance (from memory)
 */
export function chamberAdmittance(into: ComplexColumn, omegas: Float64Array, count: number, chamber: Chamber): void {
  const c = chamber.complianceM3PerPa
  const tau = c * chamber.absorptionPaSPerM3
  const { re, im, dre, dim } = into
  if (tau === 0) {
    re.fill(0, 0, count)
    dre.fill(0, 0, count)
    dim.fill(c, 0, count)
    for (let k = 0; k < count; k++) im[k] = (omegas[k] as number) * c
    return
  }
  for (let k = 0; k < count; k++) {
    const omega = omegas[k] as number
    const x = omega * tau
    const share = 1 / (1 + x * x)
    const flow = omega * c * share
    const slope = c * share * share
    re[k] = flow * x
    im[k] = flow
    dre[k] = 2 * x * slope
    dim[k] = (1 - x * x) * slope
  }
}

/**
 * Adds the admittance of a branch.
 *
 *   y = n/(R + j(ωM − K/ω))    y' = −j(M + K/ω²)·y²/n
 */
export function addBranchAdmittance(into: ComplexColumn, omegas: Float64Array, size: number, branch: Branch): void {
  const { count, massKgPerM4: m, stiffnessPaPerM3: stiffness } = branch
  const { re, im, dre, dim } = into
  const r = branch.resistancePaSPerM3 > 0 ? branch.resistancePaSPerM3 : Math.sqrt(m * stiffness) / HIGHEST_Q
  if (m === 0 && stiffness === 0) {
    for (let k = 0; k < size; k++) re[k] = (re[k] as number) + count / r
    return
  }
  const r2 = r * r
  for (let k = 0; k < size; k++) {
    const omega = omegas[k] as number
    const spring = stiffness / omega
    const x = omega * m - spring
    const scale = count / (r2 + x * x)
    const yr = r * scale
    const yi = -x * scale
    const slope = (m + spring / omega) / count
    re[k] = (re[k] as number) + yr
    im[k] = (im[k] as number) + yi
    dre[k] = (dre[k] as number) + 2 * slope * yr * yi
    dim[k] = (dim[k] as number) + slope * (yi * yi - yr * yr)
  }
}
