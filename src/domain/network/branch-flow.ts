/** Volume flow through a branch, from a solved network. */
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
export function complexFlow(solution: Solution, branch: Branch): Pick<DualColumn, 're' | 'im'> {
  const { massKgPerM4: m, stiffnessPaPerM3: k, resistancePaSPerM3: r, count } = branch
  const from = pressure(solution, branch.from)
  const to = pressure(solution, branch.to)
  const { length } = solution.omegas
  const flow = { re: zero(length), im: zero(length) }
  for (let at = 0; at < length; at++) {
    const omega = solution.omegas[at] as number
    const x = omega * m - k / omega
    const scale = count / (r * r + x * x)
    const re = (from.re[at] as number) - (to.re[at] as number)
    const im = (from.im[at] as number) - (to.im[at] as number)
    flow.re[at] = scale * (re * r + im * x)
    flow.im[at] = scale * (im * r - re * x)
  }
  return flow
}
