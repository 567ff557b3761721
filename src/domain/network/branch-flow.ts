/** Volume flow through a branch, from a solved network. */
import type { DualColumn } from '../../numeric/dual-column.ts'
import type { Branch, Place } from './network.ts'
import type { Solution } from './solution.ts'

const zero = (length: number) => new Float64Array(length)

function pressure(solution: Solution, place: Place): Pick<DualColumn, 're' | 'im'> {
  const found = solution.pressures[place]
  return found ?? { re: zero(solution.omegas.length), im: zero(solution.omegas.length) }
}

/**
 * Modulus of the flow through all `count` parts of a branch.
 *
 *   |U| = n·|p_from − p_to| / |R + j(ωM − K/ω)|
 *
 * @returns [m³/s] RMS for one volt of the source
 */
export function branchFlow(solution: Solution, branch: Branch): Float64Array {
  const { massKgPerM4: m, stiffnessPaPerM3: k, resistancePaSPerM3: r, count } = branch
  const from = pressure(solution, branch.from)
  const to = pressure(solution, branch.to)
  const least = Math.sqrt(m * k) * 1e-13
  return solution.omegas.map((omega, at) => {
    const re = (from.re[at] as number) - (to.re[at] as number)
    const im = (from.im[at] as number) - (to.im[at] as number)
    const x = omega * m - k / omega
    return count * Math.sqrt((re * re + im * im) / (r * r + x * x + least * least))
  })
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
