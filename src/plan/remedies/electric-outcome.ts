/** The electrical half of a plan in the few figures that a remedy changes. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { RemedyFigures } from '../../contract/systems/remedies.ts'
import { assumptions } from '../../domain/assume.ts'
import { type Caution, gravity } from '../../domain/caution.ts'
import { cableSize } from '../../domain/circuit/cable/cable-size.ts'
import { supplyDefaults } from '../../domain/circuit/source/defaults.ts'
import { present } from '../../domain/present.ts'
import { leastVoltage } from '../electric/graph/circuit-figures.ts'
import { type CircuitPart, planGraph } from '../electric/graph/plan-graph.ts'
import { sizeOfRun } from '../electric/plan-run.ts'
import { type CablePart, type PowerRuns, planSupply } from '../electric/plan-supply.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { type PlannedLoad, planLoad } from '../load/plan-load.ts'
import type { RunPart } from '../request/part.ts'
import { resolvedPlan } from '../request/resolved-plan.ts'
import { supplyBrief } from '../request/supply-brief.ts'

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

/** The size below the chosen one that only the drop kept out, by little. */
interface NearMiss {
  readonly designation: string
  readonly missPercent: number
  /** Of the whole drop of the plan, with which it would pass. */
  readonly limitPercent: number
}

export interface ElectricOutcome {
  readonly figures: RemedyFigures
  /** By code, how grave the gravest is; the codes in the order they weigh. */
  readonly problems: ReadonlyMap<CautionCode, number>
  /** Whether the drivers and the amplifier give a load at all. */
  readonly joined: boolean
  /** Of all outputs, at the gain that is set. */
  readonly powerW?: number
  /** Whether the amplifier gives less than the drivers take. */
  readonly weak: boolean
  readonly lossPercent?: number
  readonly nearMiss?: NearMiss
  /** Cables side by side in the main run, and their section together [m²]. */
  readonly runs?: number
  readonly sectionM2?: number
  /** Of all amplifiers, at their own voltage. */
  readonly fullSineA?: number
}

function figuresOf(circuit: CircuitPart, { trunk }: PowerRuns, powerW: number | undefined): RemedyFigures {
  const [fullSine, heavy] = circuit.done
    ? [leastVoltage(circuit, 'full-sine', 'driving'), leastVoltage(circuit, 'heavy', 'idling')]
    : []
  const size = trunk === undefined ? undefined : sizeOfRun(trunk)
  return present({ fullSineV: fullSine?.voltageV, heavyV: heavy?.voltageV, cable: size, powerW })
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
  readonly matching: PlannedLoad['matching']
  readonly joined: JoinedDrivers | undefined
}

/** Planned anew from the request alone, the box left out. */
export function electricOutcome(request: PlanRequest, run: RunPart): ElectricOutcome {
  const resolved = resolvedPlan(request, assumptions(), run)
  const { joined, matching } = planLoad(resolved)
  const brief = supplyBrief(resolved)
  const supply = planSupply(brief, joined)
  const { circuit } = planGraph(brief, supply.current, supply.runs, joined)
  return outcomeOf(request, { supply, circuit, matching, joined })
}

/** Trunk and branches share the drop that is allowed: what lets a size of the trunk pass raises the whole in the same ratio. */
function nearMissOf({ supply }: PlanRequest, cable: CablePart): NearMiss | undefined {
  if (!cable.done) return undefined
  const { result, cautions } = cable.outcome
  const { missPercent, dropV, dropLimitV } = cautions.find(({ code }) => code === 'near-miss')?.figures ?? {}
  const chosen = result.candidates.findIndex(({ designation }) => designation === result.cable?.designation)
  const below = result.candidates[chosen - 1]
  if (below === undefined || missPercent === undefined || dropV === undefined || dropLimitV === undefined)
    return undefined
  const allowedPercent = supply.dropLimitPercent ?? supplyDefaults.dropLimitPercent.value
  return { designation: below.designation, missPercent, limitPercent: (allowedPercent * dropV) / dropLimitV }
}

/** A gain that was set lower is meant so. */
const isWeak = (matching: PlannedLoad['matching'], joined: JoinedDrivers | undefined) =>
  joined?.gainPowerW === undefined && matching.done && matching.outcome.result.best?.verdict === 'under-powered'

export function outcomeOf(
  request: PlanRequest,
  { supply, circuit, matching, joined }: PlannedElectrics
): ElectricOutcome {
  const { runs, current, cable, fuse } = supply
  const cautions = [current, cable, fuse, circuit].flatMap(part => (part.done ? part.outcome.cautions : []))
  const lossPercent = cable.done ? cable.outcome.result.cable?.dropPercent : undefined
  const fullSineA = current.done ? current.outcome.result.sizing.fullSineA : undefined
  return {
    figures: figuresOf(circuit, runs, joined?.powerW),
    problems: problemsOf([...cautions, ...runs.cautions]),
    joined: joined !== undefined,
    weak: isWeak(matching, joined),
    ...present({
      powerW: joined?.powerW,
      lossPercent,
      fullSineA,
      runs: runs.trunk?.runs,
      sectionM2: runs.trunk && runs.trunk.runs * cableSize(runs.trunk.designation, undefined, 'designation').areaM2,
      nearMiss: nearMissOf(request, cable)
    })
  }
}

/** What follows from how much flows; sizes, fuses and the charging balance stay as they were planned. */
const ofVoltage: readonly CautionCode[] = ['below-drop-out', 'circuit-collapse', 'collapse-margin', 'battery-assists']

/** Whether less gain could ease it. */
export const wantsVoltage = ({ problems }: ElectricOutcome): boolean => ofVoltage.some(code => problems.has(code))
