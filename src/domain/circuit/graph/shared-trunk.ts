/** Several loads behind a shared resistance: the one stable state, found without a start value. */
import type { Element, Law } from '../points/element.ts'
import { solvePoints } from '../points/solve-points.ts'

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

function currentAt({ load }: Branch, voltageV: number): number {
  if (load.kind === 'current') return load.amount
  if (load.kind === 'resistance') return voltageV / load.amount
  return load.amount === 0 ? 0 : load.amount / voltageV
}

const MINUS = 'minus'
const BLOCK = 'block'

/** Less than this would tear the matrix: the two ends are taken as one point, and what is lost there is taken off afterwards [Ω]. */
const LEAST_OHM = 1e-6

const lawOf = ({ kind, amount }: FeederLoad): Law => {
  if (kind === 'power') return { kind, powerW: amount }
  return kind === 'current' ? { kind, currentA: amount } : { kind: 'conductor', ohm: amount }
}

const loadPoint = ({ ohm }: Branch, index: number) => (ohm < LEAST_OHM ? BLOCK : `load ${index}`)

function branchElements(branch: Branch, index: number): readonly Element[] {
  const to = loadPoint(branch, index)
  const load = { id: `load ${index}`, from: to, to: MINUS, law: lawOf(branch.load) }
  if (to === BLOCK) return [load]
  return [{ id: `branch ${index}`, from: BLOCK, to, law: { kind: 'conductor', ohm: branch.ohm } }, load]
}

/** The source on its straight line: it gives and takes alike. */
const sourceElement = (sourceV: number, ohm: number): Element => ({
  id: 'source',
  from: BLOCK,
  to: MINUS,
  law: { kind: 'battery', emfV: sourceV, givingOhm: ohm, takingOhm: ohm }
})

/**
 * State of a trunk and its branches.
 *
 *   Vs − Rt·ΣI_i(v) − v = 0,  each I_i from its own loop at block voltage v
 *
 * Laid out as a circuit between points and solved as any other: from silence downwards, so that only the stable state is found.
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
  if (!(sourceV > 0)) return undefined
  const asked = factor === 1 ? branches : branches.map(branch => ({ ...branch, load: scaled(branch.load, factor) }))
  const stiff = trunkOhm < LEAST_OHM
  const loadsV = stiff ? asked.map(each => alone(sourceV, each)) : behindTrunk(sourceV, trunkOhm, asked)
  const currents = (lostV: number) =>
    asked.flatMap((branch, index) => {
      const voltageV = (loadsV[index] ?? 0) - lostV
      return voltageV > 0 ? [{ voltageV, currentA: currentAt(branch, voltageV) }] : []
    })
  const loads = currents(stiff ? trunkOhm * total(currents(0)) : 0)
  // a constant current that leaves its load no voltage is a collapse as well
  if (loads.length < asked.length) return undefined
  const totalA = total(loads)
  return { blockV: sourceV - trunkOhm * totalA, totalA, loads }
}

const total = (loads: TrunkState['loads']) => loads.reduce((sum, { currentA }) => sum + currentA, 0)

type LoadVolts = readonly (number | undefined)[]

/** Behind a shared resistance. */
function behindTrunk(sourceV: number, trunkOhm: number, branches: readonly Branch[]): LoadVolts {
  const elements = [sourceElement(sourceV, trunkOhm), ...branches.flatMap(branchElements)]
  const voltages = solvePoints(elements, MINUS)
  return branches.map((branch, index) => {
    const at = voltages?.get(loadPoint(branch, index))
    return at === undefined || branch.ohm >= LEAST_OHM ? at : at - branch.ohm * currentAt(branch, at)
  })
}

/** Without one each branch is a circuit of its own, its resistance that of the source. */
function alone(sourceV: number, { load, ohm }: Branch): number | undefined {
  return ohm < LEAST_OHM
    ? sourceV - ohm * currentAt({ load, ohm }, sourceV)
    : behindTrunk(sourceV, ohm, [{ load, ohm: 0 }])?.[0]
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
