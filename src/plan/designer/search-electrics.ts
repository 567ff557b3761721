/** The electric half of a design: match and completed driver for every combination, cable and fuse for the few that are built. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { present } from '../../domain/present.ts'
import { type CurrentPart, type PlannedSupply, planCurrent, planSupply } from '../electric/plan-supply.ts'
import { type DriverPart, planDrivers } from '../enclosure/parts/plan-drivers.ts'
import { type Setting, settingOf } from '../enclosure/parts/setting.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { type PlannedLoad, planLoad } from '../load/plan-load.ts'
import { boxBrief } from '../request/box-brief.ts'
import type { RunPart } from '../request/part.ts'
import { type ResolvedPlan, resolvedPlan } from '../request/resolved-plan.ts'
import { type SupplyBrief, supplyBrief } from '../request/supply-brief.ts'
import type { Combination } from './search-combinations.ts'
import { hindered, type Rejection } from './search-rejection.ts'

/** What is known of a combination before cable, fuse and box. */
export interface Joined {
  readonly load: PlannedLoad
  readonly drivers: DriverPart & { readonly done: true }
  readonly joined: JoinedDrivers
  readonly setting: Setting
  /** Settled as a plan settles it, without the cabin, which no figure of the search needs. */
  readonly resolved: ResolvedPlan
  readonly power: SupplyBrief
  readonly figures: {
    readonly price?: number
    readonly loadOhm: number
    readonly powerW: number
    readonly fullSineA: number
    readonly averageA: number
  }
}

export interface Electrics extends Joined {
  readonly supply: PlannedSupply
}

export type Weighed<Found> =
  | { readonly found: Found; readonly rejection?: undefined }
  | { readonly found?: undefined; readonly rejection: Rejection }

/** The request as the plan works on it. */
function resolvedAs(plan: PlanRequest, run: RunPart): ResolvedPlan {
  const { cabin: _, ...car } = plan.car
  return resolvedPlan({ ...plan, car }, assumptions(), run)
}

function currentHindrance(current: CurrentPart): Rejection | undefined {
  if (!current.done) return hindered('supply', current.refusal.message)
  const unsuited = current.outcome.cautions.find(({ code }) => code === 'amplifier-voltage-class')
  return unsuited && hindered('stop-caution', unsuited.message)
}

function noLoad({ matching }: PlannedLoad): Rejection {
  const unpublished = 'No power is published for a load that these drivers can present.'
  return hindered('match', matching.done ? unpublished : matching.refusal.message)
}

/** Match, driver and current. */
/** @param run  of the work this system is weighed in */
export function joinedWith({ plan, price }: Combination, run: RunPart): Weighed<Joined> {
  const resolved = resolvedAs(plan, run)
  const load = planLoad(resolved)
  const { joined, wiring } = load
  if (joined === undefined) return { rejection: noLoad(load) }
  if (!wiring.done) return { rejection: hindered('match', wiring.refusal.message) }
  const drivers = planDrivers(resolved, joined)
  if (!drivers.done) return { rejection: hindered('driver-data', drivers.refusal.message) }
  const setting = settingOf(boxBrief(resolved), drivers, joined)
  const power = supplyBrief(resolved)
  const current = planCurrent(power, joined)
  const rejection = currentHindrance(current)
  if (rejection !== undefined || !current.done) {
    return { rejection: rejection ?? hindered('supply', 'No current is known.') }
  }
  const { fullSineA, averageA } = current.outcome.result.currents
  const { loadOhm, powerW } = joined
  return {
    found: {
      load,
      drivers,
      joined,
      setting,
      resolved,
      power,
      figures: { ...present({ price }), loadOhm, powerW, fullSineA, averageA }
    }
  }
}

/** With the cable and the fuse that carry it. */
export function electrics(joined: Joined): Weighed<Electrics> {
  const supply = planSupply(joined.power, joined.joined)
  const refused = [supply.cable, supply.fuse].find(part => !part.done)
  if (refused !== undefined && !refused.done) return { rejection: hindered('supply', refused.refusal.message) }
  const { missing } = supply.runs
  if (missing !== undefined) return { rejection: hindered('supply', `No branch cable to ${missing} passes.`) }
  return { found: { ...joined, supply } }
}
