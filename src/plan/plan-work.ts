/** The work of a plan, from the handbook to the first drive, its dangers, and every caution at the step it belongs to. */
import type { PlanCircuit } from '../contract/systems/plan-circuit.ts'
import type { PlanReading } from '../contract/systems/readings.ts'
import type { PlanHazard } from '../contract/systems/safety.ts'
import type { Caution } from '../domain/caution.ts'
import { withStepCautions } from './answer/step-cautions.ts'
import type { PlannedBuild } from './bill/plan-build.ts'
import type { SignalPart } from './electric/plan-signal.ts'
import type { PlannedSupply } from './electric/plan-supply.ts'
import type { ResolvedPlan } from './request/resolved-plan.ts'
import { guarded, safetyCase, safetyFacts } from './safety/safety-case.ts'
import { vehicleFacts } from './steps/vehicle-facts.ts'
import { workNodes } from './steps/work-nodes.ts'
import { type WorkOrder, workOrder } from './steps/work-order.ts'
import { commissioning } from './work/commissioning.ts'
import type { CommissioningStep } from './work/first-start.ts'

interface PlannedWork {
  /** Absent where no box fits: nothing is built then. */
  readonly buildOrder?: WorkOrder
  readonly commissioning: readonly CommissioningStep[]
  readonly safety: readonly PlanHazard[]
  readonly cautions: readonly Caution[]
}

interface Made {
  readonly circuit: PlanCircuit
  readonly supply: Pick<PlannedSupply, 'current'>
  readonly readings: readonly PlanReading[]
  readonly signal: SignalPart
  readonly build: Pick<PlannedBuild, 'facts' | 'billOfMaterials'>
}

/** @param found  what the parts gave, in the order it is said */
export function planWork(
  request: ResolvedPlan,
  { circuit, supply, signal, build, readings }: Made,
  found: readonly Caution[]
): PlannedWork {
  if (build.facts === undefined) return { commissioning: [], safety: [], cautions: found }
  const vehicle = vehicleFacts(request, { circuit, signal, bill: build.billOfMaterials })
  const order = workOrder(workNodes(build.facts, vehicle), build.facts)
  const switchingOn = commissioning(
    order.steps.length + 1,
    circuit,
    signal.done ? signal.outcome.result.steps : [],
    readings,
    supply.current.done ? supply.current.outcome.result.capacitor : undefined
  )
  const dangers = safetyCase(safetyFacts(request, found), [...order.steps, ...switchingOn])
  const buildOrder = { ...order, steps: guarded(order.steps, dangers) }
  const first = guarded(switchingOn, dangers)
  return {
    buildOrder,
    commissioning: first,
    safety: dangers,
    cautions: withStepCautions(found, [...buildOrder.steps, ...first])
  }
}
