/** The steady state of a circuit that is reached when its loads are turned up from silence. */
import { choleskyFactor, choleskySolve } from '../../../numeric/linear/cholesky.ts'
import { drawnA, type Element, helpsBelowV, isLoad, type Law, slopeS, steepestS } from './element.ts'
import { supplied } from './reach.ts'

/** Voltage of every point against the reference [V]. */
export type PointVoltages = ReadonlyMap<string, number>

interface Branch {
  readonly law: Law
  /** Numbers of its points; the reference is −1. */
  readonly a: number
  readonly b: number
}

interface Equations {
  readonly residualA: Float64Array
  readonly slopes: Float64Array
}

const SETTLED_A = 1e-7
const STEPS = 1000

const at = (voltages: Float64Array, point: number) => (point < 0 ? 0 : (voltages[point] as number))
const across = ({ a, b }: Branch, voltages: Float64Array) => at(voltages, a) - at(voltages, b)

function add(target: Float64Array, place: number, value: number): void {
  target[place] = (target[place] as number) + value
}

function equations(branches: readonly Branch[], v: Float64Array, slope: typeof slopeS): Equations {
  const size = v.length
  const residualA = new Float64Array(size)
  const slopes = new Float64Array(size * size)
  for (const branch of branches) {
    const { a, b, law } = branch
    const u = across(branch, v)
    const [i, g] = [drawnA(law, u), slope(law, u)]
    if (a >= 0) add(residualA, a, i)
    if (b >= 0) add(residualA, b, -i)
    if (a >= 0) add(slopes, a * size + a, g)
    if (b >= 0) add(slopes, b * size + b, g)
    if (a >= 0 && b >= 0) {
      add(slopes, a * size + b, -g)
      add(slopes, b * size + a, -g)
    }
  }
  return { residualA, slopes }
}

const settled = ({ residualA }: Equations) => residualA.every(value => Math.abs(value) < SETTLED_A)

function moved(v: Float64Array, step: Float64Array, share: number): Float64Array {
  return v.map((value, index) => value - share * (step[index] as number))
}

const dot = (one: Float64Array, other: Float64Array) =>
  one.reduce((sum, value, index) => sum + value * (other[index] as number), 0)

/** As much of the step as leads down and not up again: the unloaded circuit is convex, so this ends. */
function alongStep(branches: readonly Branch[], v: Float64Array, step: Float64Array): Float64Array {
  for (let share = 1; share > 1e-12; share /= 2) {
    const next = moved(v, step, share)
    const now = equations(branches, next, slopeS)
    if (dot(now.residualA, step) >= 0 || settled(now)) return next
  }
  return v
}

/** Newton's step; undefined where the slopes are not positive definite. */
function stepOf({ slopes, residualA }: Equations): Float64Array | undefined {
  const factor = choleskyFactor(slopes, residualA.length)
  return factor && choleskySolve(factor, residualA.length, residualA)
}

/** Every source on its straight line: mostly the unloaded state itself, where no source is near its limit. */
function withoutLimits(branches: readonly Branch[], size: number): Float64Array | undefined {
  const straight = branches.map(branch =>
    branch.law.kind === 'regulated' ? { ...branch, law: { ...branch.law, limitA: Number.POSITIVE_INFINITY } } : branch
  )
  const zero = new Float64Array(size)
  const step = stepOf(equations(straight, zero, slopeS))
  return step && moved(zero, step, 1)
}

/** Sources and conductors alone. */
function silent(branches: readonly Branch[], size: number): Float64Array | undefined {
  const quiet = branches.filter(({ law }) => !isLoad(law))
  let v = withoutLimits(quiet, size)
  for (let turn = 0; turn < STEPS && v !== undefined; turn++) {
    const now = equations(quiet, v, slopeS)
    if (settled(now)) return v
    const step = stepOf(now)
    v = step && alongStep(quiet, v, step)
  }
  return undefined
}

const feeds = (branches: readonly Branch[], v: Float64Array) =>
  branches.every(branch => branch.law.kind !== 'power' || branch.law.powerW === 0 || across(branch, v) > 0)

/** Just past the edge of a law, so that its next part holds. */
const PAST = 1e-9

/** How much of a step is free until a source begins to help: up to there all laws are convex, so that no state is passed. */
function shareToHelp(branches: readonly Branch[], v: Float64Array, step: Float64Array): number {
  return branches.reduce((share, branch) => {
    const edgeV = helpsBelowV(branch.law)
    if (edgeV === undefined) return share
    const [aboveV, fallV] = [across(branch, v) - edgeV, across(branch, step)]
    return aboveV > 0 && fallV > aboveV ? Math.min(share, (1 + PAST) * (aboveV / fallV) + PAST * PAST) : share
  }, 1)
}

/** One step down; undefined where no source is left that could still help. */
function stepDown(branches: readonly Branch[], v: Float64Array, now: Equations): Float64Array | undefined {
  const free = stepOf(now)
  if (free !== undefined) {
    const next = moved(v, free, shareToHelp(branches, v, free))
    if (feeds(branches, next)) return next
  }
  const held = stepOf(equations(branches, v, steepestS))
  const next = held && moved(v, held, 1)
  return next !== undefined && feeds(branches, next) ? next : undefined
}

/** A last step to the final digit; undefined where the state is not stable. */
function polished(v: Float64Array, now: Equations): Float64Array | undefined {
  const step = stepOf(now)
  return step && moved(v, step, 1)
}

function descend(branches: readonly Branch[], start: Float64Array): Float64Array | undefined {
  let v: Float64Array | undefined = start
  for (let turn = 0; turn < STEPS && v !== undefined; turn++) {
    const now = equations(branches, v, slopeS)
    if (settled(now)) return polished(v, now)
    v = stepDown(branches, v, now)
  }
  return undefined
}

/** The points that have a supply, numbered, and what lies between them. */
function laidOut(elements: readonly Element[], reference: string) {
  const parts = supplied(elements, reference)
  const names = [...new Set(parts.flatMap(({ from, to }) => [from, to]))].filter(point => point !== reference)
  const numbers = new Map(names.map((point, index) => [point, index]))
  const branches = parts.map(({ law, from, to }) => ({ law, a: numbers.get(from) ?? -1, b: numbers.get(to) ?? -1 }))
  return { names, branches }
}

const named = (v: Float64Array, names: readonly string[], reference: string): PointVoltages =>
  new Map([[reference, 0], ...names.map((point, index) => [point, v[index] as number] as const)])

/**
 * Voltages of all points that have a supply, by Newton steps that start at the unloaded state and come down on the highest one.
 *
 *   Σ i(u) = 0 at every point; stable while the matrix of ∂i/∂u keeps positive pivots
 *
 * @param elements  any graph, loops too; resistances [Ω] ≥ 1e-6
 * @param reference  the point of 0 V
 * @returns undefined where the loads cannot be fed
 * @validity Steady state; a lower stable state may exist where an alternator has given up and a battery helps.
 * @source Kirchhoff's laws; monotone Newton: Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations, 1970, 13.3 (from memory)
 * @check  12.7 V/6 mΩ and 12.5 V/9 mΩ side by side, 4 mΩ, 740 W → 12.1574 V at the load
 */
export function solvePoints(elements: readonly Element[], reference: string): PointVoltages | undefined {
  const { names, branches } = laidOut(elements, reference)
  const start = silent(branches, names.length)
  const v = start && descend(branches, start)
  return v && named(v, names, reference)
}

/** A current that is drawn beside all others. */
interface Extra {
  readonly from: string
  readonly to: string
  readonly currentA: number
}

/** Every voltage after each small extra current alone, to first order; those of the state where it is not stable. */
export function respondTo(
  elements: readonly Element[],
  reference: string,
  voltages: PointVoltages,
  extra: readonly Extra[]
): readonly PointVoltages[] {
  const { names, branches } = laidOut(elements, reference)
  const v = Float64Array.from(names, point => voltages.get(point) ?? 0)
  const factor = choleskyFactor(equations(branches, v, slopeS).slopes, names.length)
  if (factor === undefined) return extra.map(() => voltages)
  return extra.map(({ from, to, currentA }) => {
    const drawn = Float64Array.from(names, point => (point === from ? currentA : 0) - (point === to ? currentA : 0))
    return named(moved(v, choleskySolve(factor, names.length, drawn), 1), names, reference)
  })
}

/** Whether this many times the regulated loads can be fed. */
export function standsAt(share: number, elements: readonly Element[], reference: string): boolean {
  const scaled = elements.map(element =>
    element.law.kind === 'power' ? { ...element, law: { ...element.law, powerW: share * element.law.powerW } } : element
  )
  return solvePoints(scaled, reference) !== undefined
}

/** The largest share of the regulated loads that still stands, 0 … `highest`, by halving. */
export function sustainableShare(elements: readonly Element[], reference: string, highest = 1): number {
  let [low, high] = [0, highest]
  // half a thousandth of the highest
  for (let turn = 0; turn < 11; turn++) {
    const middle = (low + high) / 2
    if (!standsAt(middle, elements, reference)) high = middle
    else low = middle
  }
  return low
}
