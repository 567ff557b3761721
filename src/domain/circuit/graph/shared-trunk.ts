/** Several loads behind a shared resistance: the one stable state, found without a start value. */
import { bisect } from '../../../numeric/bisect.ts'
import { voltageAtConstantPower } from '../load/constant-power-feeder.ts'

/** `power`: a regulated amplifier; `current`: a given current; `resistance`: an unregulated amplifier. */
export interface FeederLoad {
  readonly kind: 'power' | 'current' | 'resistance'
  /** W, A or Ω. */
  readonly amount: number
}

export interface Branch {
  readonly load: FeederLoad
  /** From the block to the load and back [Ω]. */
  readonly ohm: number
}

export interface TrunkState {
  readonly blockV: number
  readonly totalA: number
  readonly loads: readonly { readonly voltageV: number; readonly currentA: number }[]
}

/** The same load asking for `factor` times as much. */
function scaled({ kind, amount }: FeederLoad, factor: number): FeederLoad {
  return { kind, amount: kind === 'resistance' ? amount / factor : amount * factor }
}

function voltageAt({ load, ohm }: Branch, blockV: number): number | undefined {
  if (load.kind === 'power') return voltageAtConstantPower(blockV, load.amount, ohm)
  if (load.kind === 'current') return blockV - load.amount * ohm
  return (blockV * load.amount) / (load.amount + ohm)
}

function currentAt({ load }: Branch, voltageV: number): number {
  if (load.kind === 'current') return load.amount
  if (load.kind === 'resistance') return voltageV / load.amount
  return load.amount === 0 ? 0 : load.amount / voltageV
}

/** Lowest block voltage at which a branch has a state of its own. */
function lowestBlock({ load, ohm }: Branch): number {
  if (load.kind === 'power') return 2 * Math.sqrt(load.amount * ohm)
  return load.kind === 'current' ? load.amount * ohm : 0
}

/** Golden-section search for the top of a concave function. */
function topOf(f: (x: number) => number, low: number, high: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2
  let [a, b] = [low, high]
  for (let step = 0; step < 90; step++) {
    const [c, d] = [b - ratio * (b - a), a + ratio * (b - a)]
    if (f(c) < f(d)) a = c
    else b = d
  }
  return (a + b) / 2
}

function stateAt(branches: readonly Branch[], blockV: number): TrunkState {
  const loads = branches.map(branch => {
    const voltageV = voltageAt(branch, blockV) ?? Number.NaN
    return { voltageV, currentA: currentAt(branch, voltageV) }
  })
  return { blockV, totalA: loads.reduce((sum, { currentA }) => sum + currentA, 0), loads }
}

/**
 * State of a trunk and its branches.
 *
 *   Vs − Rt·ΣI_i(v) − v = 0,  each I_i from its own loop at block voltage v
 *
 * The left side is concave in v: its top is found first, then the root between top and Vs, which is the stable one.
 *
 * @param sourceV  Vs [V]; @param trunkOhm  Rt [Ω] ≥ 0; @param branches  at least one, resistances ≥ 0
 * @param factor  all loads ask for this many times as much
 * @returns block voltage, voltages and currents; undefined on collapse
 * @validity Steady state.
 * @source Kirchhoff’s laws; constant-power quadratic, derived
 * @check  13.8 V, 8 mΩ, 700 W behind 3 mΩ and 500 W behind 4 mΩ → block 13.0556 V, 12.8927 and 12.9005 V, 54.294 and 38.758 A
 */
export function trunkState(
  sourceV: number,
  trunkOhm: number,
  branches: readonly Branch[],
  factor = 1
): TrunkState | undefined {
  const asked = factor === 1 ? branches : branches.map(branch => ({ ...branch, load: scaled(branch.load, factor) }))
  const [only] = asked
  if (asked.length === 1 && only !== undefined) return alone(sourceV, trunkOhm, only)
  const lowest = Math.max(...asked.map(lowestBlock))
  if (!(sourceV > 0) || lowest > sourceV) return undefined
  const excess = (blockV: number) => {
    const total = stateAt(asked, blockV).totalA
    return Number.isNaN(total) ? Number.NEGATIVE_INFINITY : sourceV - trunkOhm * total - blockV
  }
  if (excess(sourceV) >= 0) return running(stateAt(asked, sourceV))
  const top = topOf(excess, lowest, sourceV)
  if (excess(top) < 0) return undefined
  const state = stateAt(asked, bisect(excess, top, sourceV))
  return running(state)
}

/** A constant current that leaves its load no voltage is a collapse as well. */
function running(state: TrunkState): TrunkState | undefined {
  return state.loads.every(({ voltageV }) => voltageV > 0) ? state : undefined
}

/** One load: trunk and branch are one loop, so the closed form holds. */
function alone(sourceV: number, trunkOhm: number, branch: Branch): TrunkState | undefined {
  if (!(sourceV > 0)) return undefined
  const whole = { ...branch, ohm: branch.ohm + trunkOhm }
  const voltageV = voltageAt(whole, sourceV)
  if (voltageV === undefined || voltageV <= 0) return undefined
  const currentA = currentAt(whole, voltageV)
  return { blockV: sourceV - currentA * trunkOhm, totalA: currentA, loads: [{ voltageV, currentA }] }
}

/** Beyond this the margin says nothing more. */
const AMPLE = 1e6

/**
 * How many times as much all loads could ask for before collapse.
 *
 * @returns factor, 0 … 1e6; undefined where even that does not collapse
 * @source derived: halved between a factor that runs and one that does not
 * @check  one load: Vs²/(4·R·P)
 */
export function collapseFactor(sourceV: number, trunkOhm: number, branches: readonly Branch[]): number | undefined {
  const [only] = branches
  if (branches.length === 1 && only?.load.kind === 'power') {
    const factor = (sourceV * sourceV) / (4 * (only.ohm + trunkOhm) * only.load.amount)
    return factor < AMPLE ? factor : undefined
  }
  const runs = (factor: number) => trunkState(sourceV, trunkOhm, branches, factor) !== undefined
  let high = 1e-3
  while (runs(high)) {
    high *= 2
    if (high > AMPLE) return undefined
  }
  let low = high === 1e-3 ? 0 : high / 2
  for (let halving = 0; halving < 40; halving++) {
    const middle = (low + high) / 2
    if (runs(middle)) low = middle
    else high = middle
  }
  return low
}
