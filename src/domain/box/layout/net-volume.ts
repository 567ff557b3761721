/** The net volume of a box of given sizes, and the size at which it reaches a wanted one. */
import { bracketedRoot } from '../../../numeric/bracketed-root.ts'
import { DesignError } from '../../design-error.ts'
import type { ShellSizes } from '../request/shell-sizes.ts'
import { type BraceAir, type BracedTask, noBraceAir } from '../stiffness/brace-plan.ts'
import { braceAirOf, netAirM3 } from './build-box.ts'
import type { OuterSizes } from './size-refusals.ts'

export function sizesOf({ fixed, slopeRad, request }: BracedTask, { width, height, depth }: OuterSizes): ShellSizes {
  const topDepthM = slopeRad === undefined ? (request.outer?.topDepthM ?? depth) : depth - height * Math.tan(slopeRad)
  return { ...fixed, widthM: width, heightM: height, depthM: depth, topDepthM }
}

/** None where the boards leave no inside. */
function whereThereIsRoom<Value>(make: () => Value): Value | undefined {
  try {
    return make()
  } catch (error) {
    if (error instanceof DesignError && error.code === 'no-solution') return undefined
    throw error
  }
}

type KnownBraces = Map<string, BraceAir | undefined>

/** Wood of the braces by size of box, as long as the task lives: one size is asked for again and again. */
const knownBraces = new WeakMap<BracedTask, KnownBraces>()

/** None where the boards leave no inside. */
function bracesAt(resolved: BracedTask, sizes: ShellSizes): BraceAir | undefined {
  if (resolved.plan === undefined) return noBraceAir
  const known: KnownBraces = knownBraces.get(resolved) ?? new Map()
  knownBraces.set(resolved, known)
  const key = `${sizes.widthM} ${sizes.heightM} ${sizes.depthM}`
  if (!known.has(key)) {
    known.set(
      key,
      whereThereIsRoom(() => braceAirOf(resolved, sizes))
    )
  }
  return known.get(key)
}

/** Net volume, or −∞ where the boards leave no inside. */
export function netOf(resolved: BracedTask, outer: OuterSizes): number {
  const sizes = sizesOf(resolved, outer)
  const braces = bracesAt(resolved, sizes)
  return (braces && whereThereIsRoom(() => netAirM3(resolved, sizes, braces))) ?? -Infinity
}

/** A micrometre, or a millionth of the path: far below the step of any saw. */
const SAME_SIZE = 1e-6

interface Bracket {
  readonly low: number
  readonly high: number
}

/** The size between two at which the volume is reached; the nearer end where it is reached nowhere or everywhere. */
function reached({ low, high }: Bracket, excess: (value: number) => number): number {
  const [excessLow, excessHigh] = [excess(low), excess(high)]
  if (excessLow >= 0) return low
  return excessHigh < 0 ? high : bracketedRoot(excess, low, high, excessLow, excessHigh, SAME_SIZE)
}

/** Share of a size within which the next turn is expected to find it. */
const NEAR_SHARE = 0.02

/** The same, looked for near a size first. */
function reachedNear({ low, high }: Bracket, near: number, excess: (value: number) => number): number {
  const close = { low: Math.max(low, near * (1 - NEAR_SHARE)), high: Math.min(high, near * (1 + NEAR_SHARE)) }
  const value = reached(close, excess)
  return value === close.low || value === close.high ? reached({ low, high }, excess) : value
}

/** Braces whose wood changes by less than this between two turns stand [m³]; turns after which their wood is worked out at each size. */
const SAME_WOOD_M3 = 1e-8
const WOOD_TURNS = 6

/**
 * Where a line of sizes reaches a net volume. Braces take nearly the same at every size, so their wood is worked out at the size
 * found, not at each that is tried.
 */
export function sizeReaching(
  resolved: BracedTask,
  target: number,
  line: (value: number) => OuterSizes,
  range: Bracket
): number {
  const at = (value: number) => sizesOf(resolved, line(value))
  const netWith = (value: number, braces: BraceAir) =>
    (whereThereIsRoom(() => netAirM3(resolved, at(value), braces)) ?? -Infinity) - target
  let value: number | undefined
  let braces = bracesAt(resolved, at(range.high))
  for (let turn = 0; turn < WOOD_TURNS && braces !== undefined; turn++) {
    const before: BraceAir = braces
    const excess = (each: number) => netWith(each, before)
    value = value === undefined ? reached(range, excess) : reachedNear(range, value, excess)
    if (resolved.plan === undefined) return value
    braces = bracesAt(resolved, at(value))
    if (braces !== undefined && woodApart(braces, before) < SAME_WOOD_M3) return value
  }
  return reached(range, each => netOf(resolved, line(each)) - target)
}

const woodApart = (a: BraceAir, b: BraceAir) => Math.abs(a.rearM3 - b.rearM3) + Math.abs(a.frontM3 - b.frontM3)
