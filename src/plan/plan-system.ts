/** POST /v1/plans: the whole chain, from data sheets to a system that can be built and switched on. */
import type { SourceId } from '../contract/sources/source.ts'
import type { PlanCircuit } from '../contract/systems/plan-circuit.ts'
import type { PlanRequest } from '../contract/systems/plan-request.ts'
import type { BillRow, Restraint } from '../contract/systems/workshop.ts'
import { assumptions } from '../domain/assume.ts'
import { cautionSources } from '../domain/caution.ts'
import type { Assumption, Outcome } from '../domain/outcome.ts'
import { present } from '../domain/present.ts'
import { planCautions } from './answer/plan-cautions.ts'
import type { PlanParts } from './answer/plan-parts.ts'
import { notAsAsked } from './answer/plan-promises.ts'
import { type PlanSummary, planSummary } from './answer/plan-summary.ts'
import { withStepCautions } from './answer/step-cautions.ts'
import { planCircuit } from './electric/plan-circuit.ts'
import { planLoad } from './electric/plan-load.ts'
import { planSignal } from './electric/plan-signal.ts'
import { planSupply } from './electric/plan-supply.ts'
import { planVoltageCautions } from './electric/plan-voltage.ts'
import { planDrivers } from './enclosure/plan-drivers.ts'
import { type EnclosureChoice, planEnclosure, type Tried } from './enclosure/plan-enclosure.ts'
import { closedHighPass } from './enclosure/plan-high-pass.ts'
import type { Part } from './request/part.ts'
import { requireUsable } from './request/plan-conflicts.ts'
import { usual } from './request/plan-usual.ts'
import { resolvedPlan } from './request/resolved-plan.ts'
import { type BuildOrder, buildCautions, buildSources } from './work/build-order.ts'
import { type CommissioningStep, commissioning } from './work/commissioning.ts'
import { planBuild } from './work/plan-build.ts'
import { restraintSources } from './work/restraint.ts'

export interface SystemPlan {
  readonly name?: string
  readonly summary: PlanSummary
  readonly parts: PlanParts
  readonly circuit: PlanCircuit
  readonly choice?: EnclosureChoice
  readonly tried: readonly Tried[]
  readonly billOfMaterials: readonly BillRow[]
  readonly buildOrder?: BuildOrder
  readonly restraint?: Restraint
  readonly commissioning: readonly CommissioningStep[]
}

const sourcesOf = (parts: PlanParts): readonly SourceId[] =>
  Object.values<Part<unknown, unknown> | undefined>({ ...parts }).flatMap(part =>
    part?.done ? part.outcome.sources : []
  )

/** Defaults that only show once the parts are there: the voltage of a running engine, the corner no dial goes below. */
function inParts({ feeder, response }: PlanParts): readonly Assumption[] {
  const { lowestCornerHz } = usual
  const runningV = feeder.done ? feeder.request.source?.voltageV : undefined
  const atLeast =
    response.done &&
    response.request.filters?.some(each => 'cornerHz' in each && each.cornerHz === lowestCornerHz.value)
  return [
    ...(runningV === undefined
      ? []
      : [
          {
            field: 'supply.source',
            value: runningV,
            why: 'volts at the battery while the engine runs: 13.8 for each 12'
          }
        ]),
    ...(atLeast
      ? [{ field: 'signal', value: lowestCornerHz.value, why: `high-pass in Hz: ${lowestCornerHz.why}` }]
      : [])
  ]
}

/**
 * @returns every part done or refused in its place; the cautions of all parts and of the work, once each
 * @validity that of the parts; an order of trials, not an optimum: the first enclosure that suits and fits is taken
 */
export function planSystem(request: PlanRequest): Outcome<SystemPlan> {
  const assumed = assumptions()
  requireUsable(request)
  const resolved = resolvedPlan(request, assumed)
  const { finish } = resolved
  const { joined, ...load } = planLoad(resolved)
  const driver = planDrivers(resolved, joined)
  const { tried, chosen, fits, misfit, goalMissed, choice, ...enclosure } = planEnclosure(resolved, driver, joined)
  const { runs, ...supply } = planSupply(resolved, joined)
  const signal = planSignal(resolved, joined, enclosure.response)
  const wires = joined === undefined ? load : { ...load, joined }
  const { circuit, ...circuitSays } = planCircuit(resolved, wires, runs, signal)
  const { sheets, ...build } = planBuild(resolved, finish, fits ? enclosure.box : undefined, circuit, supply, assumed)
  const parts: PlanParts = { ...load, driver, ...enclosure, sheets, ...supply, signal }
  const voltages = planVoltageCautions(resolved, supply.current)
  const work = [...voltages, ...(build.facts === undefined ? [] : buildCautions(build.facts))]
  const unkept = notAsAsked(request.enclosure, { chosen, ...enclosure, ...present({ goalMissed }) })
  const filtered = joined === undefined ? [] : closedHighPass(enclosure.response, joined)
  const cable = supply.cable.done ? supply.cable.outcome.result : undefined
  const capacitor = supply.current.done ? supply.current.outcome.result.capacitor : undefined
  const signalSteps = signal.done ? signal.outcome.result.steps : []
  const switchingOn = fits ? commissioning(cable, circuit, signalSteps, capacitor) : []
  const steps = [...(build.buildOrder?.steps ?? []), ...switchingOn]
  const cautions = withStepCautions(
    planCautions({ ...parts }, build.restraint, [...unkept, ...filtered], [...work, ...circuitSays.cautions]),
    steps
  )
  return {
    result: {
      ...present({ name: request.name }),
      summary: planSummary(resolved, parts, { joined, chosen, misfit, unkept, cautions }, circuit),
      parts,
      circuit,
      ...present({ choice }),
      tried,
      billOfMaterials: build.billOfMaterials,
      ...present({ buildOrder: build.buildOrder, restraint: build.restraint }),
      commissioning: switchingOn
    },
    cautions,
    assumed: [...assumed.list, ...circuitSays.assumed, ...inParts(parts)],
    sources: [
      ...sourcesOf(parts),
      ...cautionSources(cautions),
      ...(build.buildOrder === undefined ? [] : buildSources),
      ...(build.restraint === undefined ? [] : restraintSources)
    ],
    basis: []
  }
}
