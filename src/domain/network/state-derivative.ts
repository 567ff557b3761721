/** The equations of a network in time: how fast each state changes, and what flows to the outside. */
import { solveReal } from '../../numeric/linear/real-solve.ts'
import type { GroupTotals } from './driver-columns.ts'
import { type Branch, OUTSIDE, type Place } from './network.ts'
import type { Loop, StateLayout } from './state-layout.ts'

const conductance = ({ count, resistancePaSPerM3 }: Branch) => count / resistancePaSPerM3

/** Flow into each chamber from cones, ports and radiators. */
function inflows({ network, totals, cones, moving }: StateLayout, x: Float64Array): Float64Array {
  const into = new Float64Array(network.chambers.length)
  const add = (place: Place, flow: number) => {
    if (place >= 0) into[place] = (into[place] as number) + flow
  }
  network.drivers.forEach(({ front, rear }, group) => {
    const swept = (totals[group] as GroupTotals).sd * (x[cones[group] as number] as number)
    add(front, swept)
    add(rear, -swept)
  })
  for (const { branch, flow } of moving) {
    add(branch.from, -(x[flow] as number))
    add(branch.to, x[flow] as number)
  }
  return into
}

/**
 * Pressures: q/C where nothing absorbs; else what leaks and absorption leave of the inflow,
 * p/R + Σ g·Δp = q/(C·R) + inflow.
 */
function pressures({ network, leaks, charges }: StateLayout, x: Float64Array, into: Float64Array): Float64Array {
  const n = network.chambers.length
  const matrix = new Float64Array(n * n)
  const p = new Float64Array(n)
  network.chambers.forEach(({ complianceM3PerPa: c, absorptionPaSPerM3: r }, node) => {
    const still = (x[charges + node] as number) / c
    matrix[node * n + node] = r > 0 ? 1 / r : 1
    p[node] = r > 0 ? still / r + (into[node] as number) : still
  })
  for (const leak of leaks) {
    for (const [one, other] of [
      [leak.from, leak.to],
      [leak.to, leak.from]
    ] as const) {
      if (one < 0 || network.chambers[one]?.absorptionPaSPerM3 === 0) continue
      matrix[one * n + one] = (matrix[one * n + one] as number) + conductance(leak)
      if (other >= 0) matrix[one * n + other] = (matrix[one * n + other] as number) - conductance(leak)
    }
  }
  solveReal(matrix, p)
  return p
}

const at = (p: Float64Array, place: Place) => (place < 0 ? 0 : (p[place] as number))

/** Voltage behind the filters; writes the rates of their states. */
function filtered({ filters, sections }: StateLayout, x: Float64Array, input: number, rates: Float64Array): number {
  return filters.reduce((e, { cornerHz, numerator, denominator }, index) => {
    const state = sections[index] as number
    const omega = 2 * Math.PI * cornerHz
    const [b0, b1, b2] = numerator
    const [a0, a1, a2] = denominator
    const w = x[state] as number
    if (a2 === 0) {
      const slope = (e - a0 * w) / a1
      rates[state] = omega * slope
      return b0 * w + b1 * slope
    }
    const v = x[state + 1] as number
    const bend = (e - a1 * v - a0 * w) / a2
    rates[state] = omega * v
    rates[state + 1] = omega * bend
    return b0 * w + b1 * v + b2 * bend
  }, input)
}

interface LoopState {
  readonly loop: Loop
  /** Voltage that the moving cones make against the current. */
  readonly emf: number
  /** Σ R·j over the cells. */
  readonly held: number
  readonly resistance: number
}

function loopState({ totals, cones }: StateLayout, x: Float64Array, loop: Loop): LoopState {
  const { coil, groups, cells } = loop
  return {
    loop,
    emf: groups.reduce(
      (sum, group) => sum + (totals[group] as GroupTotals).bl * (x[cones[group] as number] as number),
      0
    ),
    held: coil.cells.reduce((sum, { parallelOhm }, index) => sum + parallelOhm * (x[cells + index] as number), 0),
    resistance: coil.cells.reduce((sum, { parallelOhm }) => sum + parallelOhm, coil.resistanceOhm)
  }
}

/** Current of each loop; writes the rates of inductances. */
function currents(layout: StateLayout, x: Float64Array, e: number, rates: Float64Array): readonly number[] {
  const states = layout.loops.map(loop => loopState(layout, x, loop))
  const free = states.filter(({ loop }) => loop.current < 0)
  const fixed = states.reduce((sum, { loop }) => sum + (loop.current < 0 ? 0 : (x[loop.current] as number)), 0)
  const open = free.reduce((sum, { emf, held, resistance }) => sum + (held - emf) / resistance, fixed)
  const slope = free.reduce((sum, { resistance }) => sum + 1 / resistance, 0)
  const terminal = (e - layout.sourceOhm * open) / (1 + layout.sourceOhm * slope)
  return states.map(({ loop, emf, held, resistance }) => {
    const drive = terminal - emf + held
    const i = loop.current < 0 ? drive / resistance : (x[loop.current] as number)
    if (loop.current >= 0) rates[loop.current] = (drive - resistance * i) / loop.coil.inductanceH
    loop.coil.cells.forEach(({ parallelOhm, inductanceH }, index) => {
      rates[loop.cells + index] = (parallelOhm * (i - (x[loop.cells + index] as number))) / inductanceH
    })
    return i
  })
}

export function derivative(layout: StateLayout, x: Float64Array, input: number): Float64Array {
  const { network, totals, loops, cones, moving, leaks, charges } = layout
  const rates = new Float64Array(layout.order)
  const into = inflows(layout, x)
  const p = pressures(layout, x, into)
  const flowing = currents(layout, x, filtered(layout, x, input, rates), rates)
  loops.forEach(({ groups }, index) => {
    for (const group of groups) {
      const { bl, sd, mass, resistance, stiffness } = totals[group] as GroupTotals
      const { front, rear } = network.drivers[group] as { front: Place; rear: Place }
      const cone = cones[group] as number
      const [u, moved] = [x[cone] as number, x[cone + 1] as number]
      const force = bl * (flowing[index] as number) - sd * (at(p, front) - at(p, rear))
      rates[cone] = (force - resistance * u - stiffness * moved) / mass
      rates[cone + 1] = u
    }
  })
  for (const { branch, flow, volume } of moving) {
    const { from, to, count, massKgPerM4: m, resistancePaSPerM3: r, stiffnessPaPerM3: k } = branch
    const spring = volume < 0 ? 0 : k * (x[volume] as number)
    rates[flow] = (count * (at(p, from) - at(p, to)) - r * (x[flow] as number) - spring) / m
    if (volume >= 0) rates[volume] = x[flow] as number
  }
  network.chambers.forEach(({ complianceM3PerPa: c, absorptionPaSPerM3: r }, node) => {
    const charge = x[charges + node] as number
    const lost = leaks.reduce((sum, leak) => {
      const sign = leak.from === node ? 1 : leak.to === node ? -1 : 0
      return sum + sign * conductance(leak) * (at(p, leak.from) - at(p, leak.to))
    }, 0)
    rates[charges + node] = r > 0 ? ((p[node] as number) - charge / c) / r : (into[node] as number) - lost
  })
  return rates
}

/** Sum of all flows to the outside, cone by cone, port by port, leak by leak. */
export function radiatedFlowOf(layout: StateLayout, x: Float64Array): number {
  const { network, totals, cones, moving, leaks } = layout
  const p = pressures(layout, x, inflows(layout, x))
  const towards = (from: Place, to: Place) => (to === OUTSIDE ? 1 : 0) - (from === OUTSIDE ? 1 : 0)
  const swept = network.drivers.map(
    ({ front, rear }, group) =>
      towards(rear, front) * (totals[group] as GroupTotals).sd * (x[cones[group] as number] as number)
  )
  const blown = moving.map(({ branch, flow }) => towards(branch.from, branch.to) * (x[flow] as number))
  const leaked = leaks.map(
    leak => towards(leak.from, leak.to) * conductance(leak) * (at(p, leak.from) - at(p, leak.to))
  )
  return [...swept, ...blown, ...leaked].reduce((sum, flow) => sum + flow, 0)
}
