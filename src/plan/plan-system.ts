/** POST /v1/plans: the whole chain, from data sheets to a system that can be built and switched on. */
import type { SourceId } from '../contract/sources/source.ts'
import type { PlanChoice, PlanWaysOut } from '../contract/systems/plan-choice.ts'
import type { PlanCircuit } from '../contract/systems/plan-circuit.ts'
import type { PlanCover } from '../contract/systems/plan-cover.ts'
import type { PlanHeadroom, PlanWhatIf } from '../contract/systems/plan-margins.ts'
import type { PlanRequest } from '../contract/systems/plan-request.ts'
import type { PlanSummary } from '../contract/systems/plan-summary.ts'
import type { PlanReading } from '../contract/systems/readings.ts'
import type { PlanRemedy } from '../contract/systems/remedies.ts'
import type { PlanHazard } from '../contract/systems/safety.ts'
import type { BillRow, Restraint } from '../contract/systems/workshop.ts'
import { assumptions } from '../domain/assume.ts'
import { cautionSources } from '../domain/caution.ts'
import type { Assumption, Outcome } from '../domain/outcome.ts'
import { present } from '../domain/present.ts'
import { planCautions } from './answer/plan-cautions.ts'
import { planCover } from './answer/plan-cover.ts'
import type { PlanParts } from './answer/plan-parts.ts'
import { gainAbove, notAsAsked } from './answer/plan-promises.ts'
import { planSummary } from './answer/plan-summary.ts'
import { planBuild } from './bill/plan-build.ts'
import { planGraph } from './electric/graph/plan-graph.ts'
import { planCircuit } from './electric/plan-circuit.ts'
import { planSignal } from './electric/plan-signal.ts'
import { planSupply } from './electric/plan-supply.ts'
import { planVoltageCautions } from './electric/plan-voltage.ts'
import { planChoice } from './enclosure/alternatives.ts'
import { leafletTravel } from './enclosure/leaflet-enclosure.ts'
import { fittedRadiators } from './enclosure/parts/fitted-radiators.ts'
import { planDrivers } from './enclosure/parts/plan-drivers.ts'
import { closedHighPass, hiddenCones } from './enclosure/parts/plan-high-pass.ts'
import { settingOf } from './enclosure/parts/setting.ts'
import { systemFigures } from './enclosure/parts/system-figures.ts'
import { planEnclosure } from './enclosure/plan-enclosure.ts'
import { planMargins } from './enclosure/plan-margins.ts'
import type { Tried } from './enclosure/planned-enclosure.ts'
import { loadAtGain, planLoad } from './load/plan-load.ts'
import { planWork } from './plan-work.ts'
import { planReadings, readingsInOrder } from './readings/plan-readings.ts'
import { planRemedies } from './remedies/plan-remedies.ts'
import { type BoxBrief, boxBrief } from './request/box-brief.ts'
import { planDefaults } from './request/defaults.ts'
import { type Part, partRunner } from './request/part.ts'
import { requireUsable } from './request/plan-conflicts.ts'
import { leafletCautions } from './request/plan-leaflet.ts'
import { ratingCautions } from './request/plan-ratings.ts'
import { travelCautions } from './request/plan-travel.ts'
import { resolvedPlan } from './request/resolved-plan.ts'
import { supplyBrief } from './request/supply-brief.ts'
import type { WorkOrder } from './steps/work-order.ts'
import { planWaysOut, withWayOut } from './ways-out/plan-ways-out.ts'
import { buildCautions, buildSources } from './work/build-order.ts'
import type { CommissioningStep } from './work/first-start.ts'
import { restraintSources } from './work/restraint.ts'

export interface SystemPlan {
  readonly name?: string
  readonly summary: PlanSummary
  readonly cover: PlanCover
  readonly parts: PlanParts
  readonly circuit: PlanCircuit
  readonly choice?: PlanChoice
  readonly waysOut?: PlanWaysOut
  readonly headroom?: PlanHeadroom
  readonly whatIf?: PlanWhatIf
  readonly tried: readonly Tried[]
  readonly billOfMaterials: readonly BillRow[]
  readonly buildOrder?: WorkOrder
  readonly restraint?: Restraint
  readonly commissioning: readonly CommissioningStep[]
  readonly readings: readonly PlanReading[]
  readonly remedies: readonly PlanRemedy[]
  readonly safety: readonly PlanHazard[]
}

const sourcesOf = (parts: PlanParts): readonly SourceId[] =>
  Object.values<Part<unknown, unknown> | undefined>({ ...parts }).flatMap(part =>
    part?.done ? part.outcome.sources : []
  )

/** Defaults that only show once the parts are there: the air of a port, and the corner no dial goes below. */
function inParts(brief: BoxBrief, { response, port }: PlanParts): readonly Assumption[] {
  const { lowestCornerHz, airSpeedMPerS } = planDefaults
  const aired = response.done && response.request.limits?.airSpeedMPerS !== undefined
  const atLeast =
    response.done &&
    response.request.filters?.some(each => 'cornerHz' in each && each.cornerHz === lowestCornerHz.value)
  return [
    ...(aired && brief.enclosure.airSpeedMPerS === undefined
      ? [{ field: 'enclosure.airSpeedMPerS', value: airSpeedMPerS.value, why: airSpeedMPerS.why }]
      : []),
    ...leafletTravel(brief, port),
    ...(atLeast
      ? [{ field: 'signal', value: lowestCornerHz.value, why: `high-pass in Hz: ${lowestCornerHz.why}` }]
      : [])
  ]
}

/**
 * @returns every part done or refused in its place; the cautions of all parts and of the work, once each
 * @validity that of the parts; the box is the first of those searched for the wish that can be built, or the one that was given
 */
export function planSystem(request: PlanRequest): Outcome<SystemPlan> {
  const assumed = assumptions()
  requireUsable(request)
  const run = partRunner()
  const resolved = resolvedPlan(request, assumed, run)
  const box = boxBrief(resolved)
  const power = supplyBrief(resolved)
  const borneLoad = planLoad(resolved)
  const { joined: borne } = borneLoad
  const driver = planDrivers(resolved, borne)
  const { tried, chosen, fits, misfit, goalMissed, strayed, wished, saving, ...planned } = planEnclosure(
    box,
    driver,
    borne
  )
  const { driven: joined = borne, ...enclosure } = planned
  const wires = loadAtGain(run, borneLoad, joined)
  const { matching, wiring } = wires
  const figures = fits && joined ? systemFigures(box, enclosure.box, enclosure.response, joined) : undefined
  const choice = wished && figures && planChoice(wished, figures)
  const margins =
    figures && joined && driver.done && enclosure.response.done
      ? planMargins(settingOf(box, driver, joined), { figures, joined, response: enclosure.response })
      : undefined
  const isAsTold = fits && strayed !== true
  const waysOut = isAsTold || joined === undefined ? undefined : planWaysOut(request, run)
  const { runs, ...supply } = planSupply(power, joined)
  const signal = planSignal(power, resolved, joined, enclosure.response, box.leaflet)
  const { circuit, ...circuitSays } = planCircuit(power, wires, runs, resolved.signal, signal)
  const graph = planGraph(power, supply.current, runs, joined)
  const radiators = fits ? fittedRadiators(resolved, enclosure.box, enclosure.response) : undefined
  const built = fits ? enclosure.box : undefined
  const { sheets, ...build } = planBuild(resolved, built, circuit, supply, assumed, radiators)
  const parts: PlanParts = { matching, wiring, driver, ...enclosure, sheets, ...supply, circuit: graph.circuit, signal }
  const voltages = planVoltageCautions(power, supply.current)
  const work = [...voltages, ...(build.facts === undefined ? [] : buildCautions(build.facts))]
  const unkept = [
    ...leafletCautions(fits ? box.leaflet : undefined),
    ...notAsAsked(request.enclosure, { chosen, ...enclosure, ...present({ goalMissed }) }),
    ...gainAbove(request.signal, joined)
  ]
  const heard = fits ? hiddenCones(enclosure.response) : []
  const filtered = joined === undefined ? [] : [...closedHighPass(run, enclosure.response, joined), ...heard]
  const found = planCautions(
    { ...parts },
    build.restraint,
    [
      ...unkept,
      ...filtered,
      ...ratingCautions(request.driver, resolved.driver),
      ...travelCautions(request.driver, resolved.driver)
    ],
    [...work, ...circuitSays.cautions]
  )
  const capacitor = supply.current.done && supply.current.outcome.result.capacitor !== undefined
  const senses = signal.done && signal.outcome.result.turnOn?.method === 'signal-sensing'
  const readings = planReadings(graph.circuit, capacitor, senses)
  const made = { circuit, supply, signal, build, readings }
  const { buildOrder, commissioning, safety, cautions } = planWork(resolved, made, found)
  const told = {
    joined,
    chosen,
    leaflet: box.leaflet !== undefined,
    radiators,
    misfit: withWayOut(misfit, waysOut),
    unkept,
    cautions,
    saving
  }
  const summary = planSummary(resolved, parts, told, circuit)
  const reasons = summary.reasons.map(({ detail }) => detail)
  const steps = [...(buildOrder?.steps ?? []), ...commissioning]
  return {
    result: {
      ...present({ name: request.name }),
      summary,
      cover: planCover(resolved, parts, { joined, chosen, fits, radiators, cautions, steps, safety, reasons }),
      parts,
      circuit,
      ...present({ choice, waysOut }),
      ...margins,
      tried,
      billOfMaterials: build.billOfMaterials,
      ...present({ buildOrder, restraint: build.restraint }),
      commissioning,
      readings: readingsInOrder(readings, commissioning),
      remedies: planRemedies(request, run, {
        supply: { ...supply, runs },
        circuit: graph.circuit,
        matching,
        joined
      }),
      safety
    },
    cautions,
    assumed: [...assumed.list, ...circuitSays.assumed, ...graph.assumed, ...inParts(box, parts)],
    sources: [
      ...sourcesOf(parts),
      ...cautionSources(cautions),
      ...(buildOrder === undefined ? [] : buildSources),
      ...(build.restraint === undefined ? [] : restraintSources)
    ],
    basis: []
  }
}
