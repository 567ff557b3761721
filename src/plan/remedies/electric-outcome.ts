/** The electrical half of a plan in the few figures that a remedy changes. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { CircuitRequest } from '../../contract/supply/supply-circuit.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { RemedyFigures } from '../../contract/systems/remedies.ts'
import { assumptions } from '../../domain/assume.ts'
import { type Caution, gravity } from '../../domain/caution.ts'
import { computeCircuit } from '../../domain/circuit/points/compute-circuit.ts'
import { present } from '../../domain/present.ts'
import { leastVoltage } from '../electric/graph/circuit-figures.ts'
import { type CircuitPart, planGraph } from '../electric/graph/plan-graph.ts'
import { sizeOfRun } from '../electric/plan-run.ts'
import { type PowerRuns, planSupply } from '../electric/plan-supply.ts'
import { planLoad } from '../load/plan-load.ts'
import { runPart } from '../request/part.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'

/** What a remedy is sought for. */
const sought: readonly CautionCode[] = [
  'amplifier-voltage-class',
  'converter-too-small',
  'below-drop-out',
  'circuit-collapse',
  'cable-overloaded',
  'cable-unguarded',
  'no-cable-fits',
  'charge-deficit-cruise',
  'charge-deficit-idle',
  'total-drop',
  'collapse-margin',
  'fuse-below-load',
  'fault-current-low',
  'battery-assists'
]

export interface ElectricOutcome {
  readonly figures: RemedyFigures
  /** By code, how grave the gravest is; the codes in the order they weigh. */
  readonly problems: ReadonlyMap<CautionCode, number>
  /** Whether the drivers and the amplifier give a load at all. */
  readonly joined: boolean
  readonly circuit?: CircuitRequest
  readonly lossPercent?: number
  /** Of all amplifiers, at their own voltage. */
  readonly fullSineA?: number
}

function figuresOf(circuit: CircuitPart, { trunk }: Partial<PowerRuns>): RemedyFigures {
  const [fullSine, heavy] = circuit.done
    ? [leastVoltage(circuit, 'full-sine', 'driving'), leastVoltage(circuit, 'heavy', 'idling')]
    : []
  const size = trunk === undefined ? undefined : sizeOfRun(trunk)
  return present({ fullSineV: fullSine?.voltageV, heavyV: heavy?.voltageV, cable: size })
}

function problemsOf(cautions: readonly Caution[]): ReadonlyMap<CautionCode, number> {
  const grave = (code: CautionCode) =>
    Math.max(0, ...cautions.filter(each => each.code === code).map(({ level }) => gravity[level]))
  return new Map(sought.flatMap(code => (grave(code) > 0 ? [[code, grave(code)] as const] : [])))
}

/** What a plan has worked out of its supply side. */
export interface PlannedElectrics {
  readonly supply: ReturnType<typeof planSupply>
  readonly circuit: CircuitPart
  readonly joined: boolean
}

/** Planned anew from the request alone, the box left out. */
export function electricOutcome(request: PlanRequest): ElectricOutcome {
  const resolved = resolvedPlan(request, assumptions())
  const { joined } = planLoad(resolved)
  const supply = planSupply(resolved, joined)
  const { circuit } = planGraph(resolved, supply.current, supply.runs, joined)
  return outcomeOf({ supply, circuit, joined: joined !== undefined })
}

export function outcomeOf({ supply, circuit, joined }: PlannedElectrics): ElectricOutcome {
  const { runs, current, cable, fuse } = supply
  const cautions = [current, cable, fuse, circuit].flatMap(part => (part.done ? part.outcome.cautions : []))
  const lossPercent = cable.done ? cable.outcome.result.cable?.dropPercent : undefined
  const fullSineA = current.done ? current.outcome.result.sizing.fullSineA : undefined
  return {
    figures: figuresOf(circuit, runs),
    problems: problemsOf([...cautions, ...runs.cautions]),
    joined,
    ...present({ circuit: circuit.done ? circuit.request : undefined, lossPercent, fullSineA })
  }
}

/** What follows from how much flows; sizes, fuses and the charging balance stay as they were planned. */
const ofVoltage: readonly CautionCode[] = ['below-drop-out', 'circuit-collapse', 'collapse-margin', 'battery-assists']

/** Whether less gain could ease it. */
export const wantsVoltage = ({ problems }: ElectricOutcome): boolean => ofVoltage.some(code => problems.has(code))

/** The same circuit with every amplifier turned down: sizes stay, only what flows changes. */
export function turnedDown(
  { circuit, figures, problems }: ElectricOutcome,
  factor: number
): ElectricOutcome | undefined {
  if (circuit === undefined) return undefined
  const amplifiers = circuit.amplifiers.map(each =>
    each.powerW === undefined ? each : { ...each, powerW: factor * each.powerW }
  )
  const part = runPart({ ...circuit, amplifiers }, computeCircuit)
  if (!part.done) return undefined
  return {
    figures: { ...figuresOf(part, {}), ...present({ cable: figures.cable }) },
    problems: new Map([
      ...[...problems].filter(([code]) => !ofVoltage.includes(code)),
      ...[...problemsOf(part.outcome.cautions)].filter(([code]) => ofVoltage.includes(code))
    ]),
    joined: true
  }
}
