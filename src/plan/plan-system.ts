/** POST /v1/plans: the whole chain, from data sheets to a system that can be built and switched on. */
import type { AmplifierMatch, AmplifierMatchRequest } from '../domain/amplifier/match-amplifier.ts'
import { assumptions } from '../domain/assume.ts'
import type { CoilWiring, CoilWiringRequest } from '../domain/coils/wire-coils.ts'
import type { Outcome } from '../domain/outcome.ts'
import type { SourceId } from '../domain/source.ts'
import type { BillRow } from './bill-row.ts'
import { type BuildOrder, buildCautions, buildSources } from './build-order.ts'
import { type CommissioningStep, commissioning } from './commissioning.ts'
import type { Part } from './part.ts'
import type { BoxPart } from './plan-box.ts'
import { planBuild, type SheetsPart } from './plan-build.ts'
import type { SizingPart } from './plan-candidates.ts'
import { planCautions } from './plan-cautions.ts'
import { type DriverPart, planDrivers } from './plan-drivers.ts'
import { planEnclosure, type Tried } from './plan-enclosure.ts'
import type { FeederPart } from './plan-feeder.ts'
import { settledFinish } from './plan-finish.ts'
import { planLoad } from './plan-load.ts'
import type { PortPart } from './plan-port.ts'
import type { PlanRequest } from './plan-request.ts'
import type { ResponsePart } from './plan-response.ts'
import { planSignal, type SignalPart } from './plan-signal.ts'
import { settledSpace } from './plan-space.ts'
import { type PlanSummary, planSummary } from './plan-summary.ts'
import { type CablePart, type CurrentPart, type FusePart, planSupply } from './plan-supply.ts'
import { planVoltageCautions } from './plan-voltage.ts'
import { type Restraint, restraintSources } from './restraint.ts'

/** Each part is what its own resource gives for its own request. */
export interface PlanParts {
  readonly matching: Part<AmplifierMatchRequest, AmplifierMatch>
  readonly wiring: Part<CoilWiringRequest, CoilWiring>
  readonly driver: DriverPart
  readonly sizing: SizingPart
  readonly port?: PortPart
  readonly box: BoxPart
  readonly response: ResponsePart
  readonly sheets: SheetsPart
  readonly current: CurrentPart
  readonly cable: CablePart
  readonly fuse: FusePart
  readonly feeder: FeederPart
  readonly signal: SignalPart
}

export interface SystemPlan {
  readonly name?: string
  readonly summary: PlanSummary
  readonly parts: PlanParts
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

/**
 * @returns every part done or refused in its place; the cautions of all parts and of the work, once each
 * @validity that of the parts; an order of trials, not an optimum: the first enclosure that suits and fits is taken
 */
export function planSystem(request: PlanRequest): Outcome<SystemPlan> {
  const assumed = assumptions()
  const finish = settledFinish(request.finish, assumed)
  const settled = { ...request, finish, car: { ...request.car, space: settledSpace(request.car, finish, assumed) } }
  const { joined, ...load } = planLoad(settled)
  const driver = planDrivers(settled, joined)
  const { tried, chosen, fits, ...enclosure } = planEnclosure(settled, driver, joined)
  const supply = planSupply(settled, joined)
  const signal = planSignal(settled, joined, enclosure.response)
  const { sheets, ...build } = planBuild(settled, finish, enclosure.box, supply)
  const parts: PlanParts = { ...load, driver, ...enclosure, sheets, ...supply, signal }
  const voltages = planVoltageCautions(settled, supply.current)
  const work = [...voltages, ...(build.facts === undefined ? [] : buildCautions(build.facts))]
  const built = fits ? parts : { ...parts, port: undefined, box: undefined, response: undefined }
  const cautions = planCautions({ ...built }, build.restraint, work)
  const cable = supply.cable.done ? supply.cable.outcome.result : undefined
  const steps = signal.done ? signal.outcome.result.steps : []
  return {
    result: {
      ...(request.name === undefined ? {} : { name: request.name }),
      summary: planSummary(settled, parts, joined, chosen, cautions),
      parts,
      tried,
      billOfMaterials: build.billOfMaterials,
      ...(build.buildOrder === undefined ? {} : { buildOrder: build.buildOrder }),
      ...(build.restraint === undefined ? {} : { restraint: build.restraint }),
      commissioning: commissioning(cable, steps)
    },
    cautions,
    assumed: assumed.list,
    sources: [
      ...sourcesOf(parts),
      ...(build.buildOrder === undefined ? [] : buildSources),
      ...(build.restraint === undefined ? [] : restraintSources)
    ],
    basis: []
  }
}
