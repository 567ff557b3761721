/**
 * Solves a network over a grid of frequencies, element by element in blocks: each element adds its column of admittances,
 * then all points of the block are solved. One path for every network, from none to many unknown pressures.
 */
import {
  addColumn,
  clearColumn,
  type DualColumn,
  dualColumn,
  invertColumn,
  multiplyColumn
} from '../../numeric/dual-column.ts'
import { packed } from '../../numeric/symmetric-elimination.ts'
import { solveSymmetric } from '../../numeric/symmetric-solve.ts'
import {
  coneVelocity,
  type DriverColumns,
  driverColumns,
  fillDriverColumns,
  type GroupTotals,
  groupCurrent,
  groupTotals
} from './driver-columns.ts'
import { branchAdmittance, chamberAdmittance } from './element-columns.ts'
import { BEHIND, type Network } from './network.ts'

/** Complex RMS amplitudes for one volt of the source, each with its derivative by ω. */
export interface Solution {
  readonly omegas: Float64Array
  /** Per chamber [Pa]. */
  readonly pressures: readonly DualColumn[]
  /** Per driver group [m/s]: of each cone, positive towards its front. */
  readonly velocities: readonly DualColumn[]
  /** Into the terminals [A]. */
  readonly current: DualColumn
  /** Voltage at the terminals of the drivers [V]; 1 without a resistance before them. */
  readonly terminal: DualColumn
  /** Sum of all flows to the outside [m³/s]. */
  readonly radiated: DualColumn
}

export interface NetworkSolver {
  readonly network: Network
  /** Fills a solution made by {@link emptySolution} of this network. */
  readonly solve: (into: Solution) => void
}

/** Points solved together: small enough to stay in the nearest cache. */
const BLOCK = 64

export function emptySolution(network: Network, omegas: Float64Array): Solution {
  const columns = (count: number) => Array.from({ length: count }, () => dualColumn(omegas.length))
  return {
    omegas,
    pressures: columns(network.chambers.length),
    velocities: columns(network.drivers.length),
    current: dualColumn(omegas.length),
    terminal: dualColumn(omegas.length),
    radiated: dualColumn(omegas.length)
  }
}

interface Workspace {
  readonly chambers: readonly DualColumn[]
  readonly branches: readonly DualColumn[]
  readonly drivers: readonly DriverColumns[]
  readonly totals: readonly GroupTotals[]
  readonly matrix: readonly DualColumn[]
  readonly sources: readonly DualColumn[]
  readonly scratch: DualColumn
  readonly omegas: Float64Array
}

function workspace({ chambers, branches, drivers }: Network): Workspace {
  const n = chambers.length
  const columns = (count: number) => Array.from({ length: count }, () => dualColumn(BLOCK))
  return {
    chambers: columns(n),
    branches: columns(branches.length),
    drivers: drivers.map(() => driverColumns(BLOCK)),
    totals: drivers.map(groupTotals),
    matrix: columns((n * (n + 1)) / 2),
    sources: columns(n),
    scratch: dualColumn(BLOCK),
    omegas: new Float64Array(BLOCK)
  }
}

/** Adds an admittance between two places to the nodal matrix. */
function stamp(matrix: readonly DualColumn[], n: number, from: number, to: number, y: DualColumn, count: number): void {
  if (from >= 0) addColumn(matrix[packed(from, from, n)] as DualColumn, y, 1, count)
  if (to >= 0) addColumn(matrix[packed(to, to, n)] as DualColumn, y, 1, count)
  if (from >= 0 && to >= 0) addColumn(matrix[packed(from, to, n)] as DualColumn, y, -1, count)
}

function assemble({ chambers, branches, drivers }: Network, w: Workspace, count: number): void {
  const n = chambers.length
  for (const column of w.matrix) clearColumn(column, count)
  for (const column of w.sources) clearColumn(column, count)
  chambers.forEach((chamber, node) => {
    const y = w.chambers[node] as DualColumn
    chamberAdmittance(y, w.omegas, count, chamber)
    stamp(w.matrix, n, node, BEHIND, y, count)
  })
  branches.forEach((branch, index) => {
    const y = w.branches[index] as DualColumn
    branchAdmittance(y, w.omegas, count, branch)
    stamp(w.matrix, n, branch.from, branch.to, y, count)
  })
  drivers.forEach((group, index) => {
    const columns = w.drivers[index] as DriverColumns
    const totals = w.totals[index] as GroupTotals
    fillDriverColumns(columns, w.omegas, count, group, totals)
    stamp(w.matrix, n, group.front, group.rear, columns.y, count)
    const push = totals.sd * totals.bl
    if (group.front >= 0) addColumn(w.sources[group.front] as DualColumn, columns.q, push, count)
    if (group.rear >= 0) addColumn(w.sources[group.rear] as DualColumn, columns.q, -push, count)
  })
}

/** Pressure at `front` less that at `rear`, or nothing where both are constant. */
function difference(into: Solution, w: Workspace, front: number, rear: number, offset: number, count: number) {
  if (front < 0 && rear < 0) return undefined
  clearColumn(w.scratch, count)
  if (front >= 0) addPart(w.scratch, into.pressures[front] as DualColumn, offset, 1, count)
  if (rear >= 0) addPart(w.scratch, into.pressures[rear] as DualColumn, offset, -1, count)
  return w.scratch
}

function addPart(into: DualColumn, from: DualColumn, offset: number, sign: number, count: number): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    into.re[k] = (into.re[k] as number) + sign * (from.re[o] as number)
    into.im[k] = (into.im[k] as number) + sign * (from.im[o] as number)
    into.dre[k] = (into.dre[k] as number) + sign * (from.dre[o] as number)
    into.dim[k] = (into.dim[k] as number) + sign * (from.dim[o] as number)
  }
}

/** into ← into − y·p, from `offset` of into and p */
function subtractFlow(into: DualColumn, y: DualColumn, p: DualColumn, offset: number, count: number): void {
  for (let k = 0, o = offset; k < count; k++, o++) {
    const yr = y.re[k] as number
    const yi = y.im[k] as number
    const dyr = y.dre[k] as number
    const dyi = y.dim[k] as number
    const pr = p.re[o] as number
    const pi = p.im[o] as number
    const dpr = p.dre[o] as number
    const dpi = p.dim[o] as number
    into.re[o] = (into.re[o] as number) - (yr * pr - yi * pi)
    into.im[o] = (into.im[o] as number) - (yr * pi + yi * pr)
    into.dre[o] = (into.dre[o] as number) - (dyr * pr - dyi * pi + yr * dpr - yi * dpi)
    into.dim[o] = (into.dim[o] as number) - (dyr * pi + dyi * pr + yr * dpi + yi * dpr)
  }
}

/**
 * All that flows out is what the chambers give up: U = −Σ y_chamber·p − Σ flows to behind. The same sum as over cones, ports,
 * radiators and leaks, without the loss of digits where those cancel.
 */
function radiate(network: Network, w: Workspace, into: Solution, offset: number, count: number): void {
  network.chambers.forEach((_, node) => {
    subtractFlow(into.radiated, w.chambers[node] as DualColumn, into.pressures[node] as DualColumn, offset, count)
  })
  network.branches.forEach(({ from, to }, index) => {
    const inner = from === BEHIND ? to : to === BEHIND ? from : BEHIND
    if (inner < 0) return
    subtractFlow(into.radiated, w.branches[index] as DualColumn, into.pressures[inner] as DualColumn, offset, count)
  })
  network.drivers.forEach(({ front, rear }, index) => {
    const towards = (front === BEHIND ? -1 : 0) + (rear === BEHIND ? 1 : 0)
    if (towards === 0) return
    const flow = towards * (w.totals[index] as GroupTotals).sd
    addScaled(into.radiated, into.velocities[index] as DualColumn, flow, offset, count)
  })
}

function addScaled(into: DualColumn, from: DualColumn, scale: number, offset: number, count: number): void {
  for (let o = offset; o < offset + count; o++) {
    into.re[o] = (into.re[o] as number) + scale * (from.re[o] as number)
    into.im[o] = (into.im[o] as number) + scale * (from.im[o] as number)
    into.dre[o] = (into.dre[o] as number) + scale * (from.dre[o] as number)
    into.dim[o] = (into.dim[o] as number) + scale * (from.dim[o] as number)
  }
}

/** From one volt over the drivers to one volt of the source: terminal = 1/(1 + Rg·i). */
function applySource(sourceOhm: number, w: Workspace, into: Solution, offset: number, count: number): void {
  const { current, terminal } = into
  clearFrom(terminal, offset, count)
  terminal.re.fill(1, offset, offset + count)
  if (sourceOhm === 0) return
  const { scratch } = w
  clearColumn(scratch, count)
  addPart(scratch, current, offset, sourceOhm, count)
  for (let k = 0; k < count; k++) scratch.re[k] = (scratch.re[k] as number) + 1
  invertColumn(scratch, scratch, count)
  for (const column of [terminal, current, into.radiated, ...into.pressures, ...into.velocities]) {
    multiplyColumn(column, offset, scratch, count)
  }
}

function clearFrom({ re, im, dre, dim }: DualColumn, offset: number, count: number): void {
  for (const part of [re, im, dre, dim]) part.fill(0, offset, offset + count)
}

/** @param sourceOhm  resistance of amplifier and cable before the terminals [Ω] ≥ 0 */
export function networkSolver(network: Network, sourceOhm: number): NetworkSolver {
  const w = workspace(network)
  const solveBlock = (into: Solution, offset: number, count: number) => {
    for (let k = 0; k < count; k++) w.omegas[k] = into.omegas[offset + k] as number
    assemble(network, w, count)
    solveSymmetric(w.matrix, w.sources, into.pressures, offset, count)
    clearFrom(into.current, offset, count)
    clearFrom(into.radiated, offset, count)
    network.drivers.forEach(({ front, rear }, index) => {
      const columns = w.drivers[index] as DriverColumns
      const totals = w.totals[index] as GroupTotals
      const velocity = into.velocities[index] as DualColumn
      const delta = difference(into, w, front, rear, offset, count)
      if (network.drivers.length === 1) groupCurrent(into.current, offset, columns, totals, delta, count)
      else {
        groupCurrent(velocity, offset, columns, totals, delta, count)
        addScaled(into.current, velocity, 1, offset, count)
      }
      coneVelocity(velocity, offset, columns, totals, delta, count)
    })
    radiate(network, w, into, offset, count)
    applySource(sourceOhm, w, into, offset, count)
  }
  return {
    network,
    solve: into => {
      for (let offset = 0; offset < into.omegas.length; offset += BLOCK) {
        solveBlock(into, offset, Math.min(BLOCK, into.omegas.length - offset))
      }
    }
  }
}
