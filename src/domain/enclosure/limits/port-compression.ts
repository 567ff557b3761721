/** What the jets at the ends of the ports take from the level at a given drive. */
import { type ComplexVector, solveInPlace } from '../../../numeric/linear/complex-solve.ts'
import { complexFlow } from '../../network/branch-flow.ts'
import type { Solution } from '../../network/solution.ts'
import { emptySolution } from '../../network/solution.ts'
import { networkSolver } from '../../network/solver.ts'
import type { Opening } from '../model/built-network.ts'
import type { ResponseSystem } from '../model/response-system.ts'
import { jetResistance } from './jet-resistance.ts'

const MAX_ROUNDS = 80
const CLOSE_ENOUGH = 1e-7

interface State {
  /** Flow of each port [m³/s] for one volt, by port. */
  readonly flows: readonly ComplexVector[]
  readonly radiated: ComplexVector
}

/** The network with so much more resistance in one of its ports, or in none. */
function stateOf(system: ResponseSystem, omegas: Float64Array, extra: number, changed: number): State {
  const branches = system.network.branches.map((branch, index) =>
    index === changed ? { ...branch, resistancePaSPerM3: branch.resistancePaSPerM3 + extra } : branch
  )
  const network = { ...system.network, branches }
  const solution: Solution = emptySolution(network, omegas)
  networkSolver(network, system.sourceOhm).solve(solution)
  const indices = system.ports.map(({ branch }) => system.network.branches.indexOf(branch))
  const flows = indices.map(index => complexFlow(solution, branches[index] as (typeof branches)[number]))
  return { flows, radiated: solution.radiated }
}

const part = ({ re, im }: ComplexVector, k: number) => ({ re: re[k] as number, im: im[k] as number })
type Complex = ReturnType<typeof part>
const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im })
const times = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re })
function over(a: Complex, b: Complex): Complex {
  const size = b.re * b.re + b.im * b.im
  return size === 0
    ? { re: 0, im: 0 }
    : { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size }
}

interface JetSolver {
  /** Radiated flow for one volt [m³/s], modulus, at the frequency of the given index and at the given drive. */
  readonly radiated: (index: number, voltageV: number) => number
}

/** U(r) = (1 + Y·diag r)⁻¹·U₀ into `into`, r in Pa·s/m³ of the whole flow of a port. */
function flowsWith(
  y: readonly Complex[],
  still: readonly Complex[],
  r: Float64Array,
  into: ComplexVector,
  matrix: ComplexVector
): void {
  const n = still.length
  for (let row = 0; row < n; row++) {
    const free = still[row] as Complex
    into.re[row] = free.re
    into.im[row] = free.im
    for (let column = 0; column < n; column++) {
      const entry = y[row * n + column] as Complex
      matrix.re[row * n + column] = entry.re * (r[column] as number) + (row === column ? 1 : 0)
      matrix.im[row * n + column] = entry.im * (r[column] as number)
    }
  }
  solveInPlace(matrix, into)
}

/**
 * The system with its ports' jet losses at the speeds they really have, at any drive.
 *
 * Resistances added to n ports change a linear network in n dimensions only, so that n + 1 solves tell all:
 *
 *   Y_·j = (U₀ − U_j)/(d·U_jj)   U(r) = (1 + Y·diag r)⁻¹·U₀   W(r) = W₀ − Σ g_j·r_j·U_j(r)   g_j = (W₀ − W_j)/(d·U_jj)
 *
 * with U_j, W_j the flows and the radiated flow when port j alone has the resistance d more. Then r = (4/3π)·ρ·K·v̂(r)/S by half steps.
 *
 * @validity quasi-steady jets: an upper estimate of the loss, ±50 %
 * @source derived; see jetResistance; that mass hardly changes with level: Bezzola et al., AES paper 10423, 2020 (abstract read)
 * @check  the same loss as a linear port of that friction; K = 0 leaves the linear response
 */
export function jetSolver(system: ResponseSystem, lossFactor: number, frequenciesHz: Float64Array): JetSolver {
  const { ports, air } = system
  const n = ports.length
  const probes = probesOf(system, frequenciesHz)
  const [flow, matrix] = [vector(n), vector(n * n)]
  /** Kept from one frequency to the next: a neighbour is a good guess. */
  const r = new Float64Array(n)
  const radiated = (k: number, voltageV: number) => {
    const { still, own, y } = couplingAt(ports, probes, k)
    converge(
      r,
      () => flowsWith(y, still, r, flow, matrix),
      j => {
        const { count, areaM2 } = ports[j] as Opening
        const speed =
          (Math.SQRT2 * voltageV * Math.hypot(flow.re[j] as number, flow.im[j] as number)) / (count * areaM2)
        return jetResistance(air.densityKgPerM3, areaM2, lossFactor, speed) / count
      }
    )
    return leftOf(probes, own, r, flow, k)
  }
  return { radiated }
}

interface Probes {
  readonly base: State
  /** Resistance added to one mouth of each port in its probe. */
  readonly extras: readonly number[]
  readonly states: readonly State[]
}

function probesOf(system: ResponseSystem, frequenciesHz: Float64Array): Probes {
  const { ports, air, network } = system
  const omegas = frequenciesHz.map(frequency => 2 * Math.PI * frequency)
  const extras = ports.map(({ areaM2 }) => jetResistance(air.densityKgPerM3, areaM2, 1, 10))
  return {
    base: stateOf(system, omegas, 0, -1),
    extras,
    states: ports.map(({ branch }, j) => stateOf(system, omegas, extras[j] as number, network.branches.indexOf(branch)))
  }
}

/** U₀, d·U_jj and Y at one frequency. */
function couplingAt(ports: readonly Opening[], { base, extras, states }: Probes, k: number) {
  const still = base.flows.map(of => part(of, k))
  const own = ports.map(({ count }, j) => {
    const d = (extras[j] as number) / count
    const { re, im } = part((states[j] as State).flows[j] as ComplexVector, k)
    return { re: d * re, im: d * im }
  })
  const y = still.flatMap((free, row) =>
    own.map((scale, j) => over(minus(free, part((states[j] as State).flows[row] as ComplexVector, k)), scale))
  )
  return { still, own, y }
}

/** |W(r)|, what is still radiated. */
function leftOf({ base, states }: Probes, own: readonly Complex[], r: Float64Array, flow: ComplexVector, k: number) {
  const lost = own.map((scale, j) => {
    const g = over(minus(part(base.radiated, k), part((states[j] as State).radiated, k)), scale)
    const { re, im } = times(g, part(flow, j))
    return { re: re * (r[j] as number), im: im * (r[j] as number) }
  })
  const left = lost.reduce((sum, one) => minus(sum, one), part(base.radiated, k))
  return Math.hypot(left.re, left.im)
}

const vector = (length: number): ComplexVector => ({ re: new Float64Array(length), im: new Float64Array(length) })

/** r ← (r + next(r))/2 until it stands; the flows are solved for the final r. */
function converge(r: Float64Array, solve: () => void, next: (port: number) => number): void {
  solve()
  for (let round = 0, moved = 1; round < MAX_ROUNDS && moved > CLOSE_ENOUGH; round++) {
    moved = 0
    for (let j = 0; j < r.length; j++) {
      const value = ((r[j] as number) + next(j)) / 2
      moved = Math.max(moved, Math.abs(value - (r[j] as number)) / Math.max(value, 1e-12))
      r[j] = value
    }
    solve()
  }
}
