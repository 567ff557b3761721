/** Admittances of chambers and branches over a block of angular frequencies, each with its derivative by ω. */
import type { DualColumn } from '../../numeric/dual-column.ts'
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
export function chamberAdmittance(into: DualColumn, omegas: Float64Array, count: number, chamber: Chamber): void {
  const c = chamber.complianceM3PerPa
  const tau = c * chamber.absorptionPaSPerM3
  if (tau === 0) {
    into.re.fill(0, 0, count)
    into.dre.fill(0, 0, count)
    into.dim.fill(c, 0, count)
    for (let k = 0; k < count; k++) into.im[k] = (omegas[k] as number) * c
    return
  }
  for (let k = 0; k < count; k++) {
    const omega = omegas[k] as number
    const x = omega * tau
    const size = 1 + x * x
    const scale = c / (size * size)
    into.re[k] = (omega * c * x) / size
    into.im[k] = (omega * c) / size
    into.dre[k] = 2 * x * scale
    into.dim[k] = (1 - x * x) * scale
  }
}

/**
 * Admittance of a branch.
 *
 *   y = n/(R + j(ωM − K/ω))    y' = −j(M + K/ω²)·y²/n
 */
export function branchAdmittance(into: DualColumn, omegas: Float64Array, size: number, branch: Branch): void {
  const { count, massKgPerM4: m, stiffnessPaPerM3: k } = branch
  const r = branch.resistancePaSPerM3 > 0 ? branch.resistancePaSPerM3 : Math.sqrt(m * k) / HIGHEST_Q
  for (let at = 0; at < size; at++) {
    const omega = omegas[at] as number
    const inertia = omega * m
    const spring = k / omega
    const x = inertia - spring
    const scale = count / (r * r + x * x)
    const yr = r * scale
    const yi = -x * scale
    const slope = (inertia + spring) / (omega * count)
    into.re[at] = yr
    into.im[at] = yi
    into.dre[at] = 2 * slope * yr * yi
    into.dim[at] = slope * (yi * yi - yr * yr)
  }
}
