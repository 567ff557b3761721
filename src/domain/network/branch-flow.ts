/** Volume flow through a branch, from a solved network. */
import type { ComplexColumn } from '../../numeric/linear/complex-column.ts'
import type { Branch } from './network.ts'
import type { Solution } from './solution.ts'

/**
 * Modulus of the flow through all `count` parts of a branch.
 *
 *   |U| = n·|p_from − p_to| / |R + j(ωM − K/ω)|
 *
 * @returns [m³/s] RMS for one volt of the source
 */
export function branchFlow({ omegas, pressures }: Solution, branch: Branch): Float64Array {
  const { massKgPerM4: m, stiffnessPaPerM3: stiffness, resistancePaSPerM3: r, count } = branch
  const [one, other] = [pressures[branch.from], pressures[branch.to]]
  const flow = new Float64Array(omegas.length)
  const near = one ?? other
  if (near === undefined) return flow
  const far = one === undefined ? undefined : other
  const { re, im } = near
  const least = r * r + m * stiffness * 1e-26
  for (let k = 0; k < omegas.length; k++) {
    const omega = omegas[k] as number
    const pr = (re[k] as number) - (far === undefined ? 0 : (far.re[k] as number))
    const pi = (im[k] as number) - (far === undefined ? 0 : (far.im[k] as number))
    const x = omega * m - stiffness / omega
    flow[k] = count * Math.sqrt((pr * pr + pi * pi) / (least + x * x))
  }
  return flow
}

/**
 * The same flow with its phase.
 *
 *   U = n·(p_from − p_to)/(R + j(ωM − K/ω))
 */
export function complexFlow({ omegas, pressures }: Solution, branch: Branch): Pick<ComplexColumn, 're' | 'im'> {
  const { massKgPerM4: m, stiffnessPaPerM3: stiffness, resistancePaSPerM3: r, count, from, to } = branch
  const flow = { re: new Float64Array(omegas.length), im: new Float64Array(omegas.length) }
  const least = m * stiffness * 1e-26
  for (const [place, sign] of [
    [from, count],
    [to, -count]
  ] as const) {
    const pressure = pressures[place]
    if (pressure === undefined) continue
    for (let k = 0; k < omegas.length; k++) {
      const omega = omegas[k] as number
      const x = omega * m - stiffness / omega
      const scale = sign / (r * r + x * x + least)
      const re = pressure.re[k] as number
      const im = pressure.im[k] as number
      flow.re[k] = (flow.re[k] as number) + scale * (re * r + im * x)
      flow.im[k] = (flow.im[k] as number) + scale * (im * r - re * x)
    }
  }
  return flow
}
