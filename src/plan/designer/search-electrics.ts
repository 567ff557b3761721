/** The cheap half of a design: match, completed driver, supply. Most combinations that fall do so here. */
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { assumptions } from '../../domain/assume.ts'
import { present } from '../../domain/present.ts'
import { type PlannedSupply, planSupply } from '../electric/plan-supply.ts'
import { type DriverPart, planDrivers } from '../enclosure/plan-drivers.ts'
import { type JoinedDrivers, type PlannedLoad, planLoad } from '../load/plan-load.ts'
import { type ResolvedPlan, resolvedPlan } from '../request/resolved-plan.ts'
import type { Combination } from './search-combinations.ts'
import { hindered, type Rejection } from './search-rejection.ts'

export interface Electrics {
  readonly load: PlannedLoad
  readonly drivers: DriverPart & { readonly done: true }
  readonly joined: JoinedDrivers
  readonly supply: PlannedSupply
  /** Settled as a plan settles it, without the cabin, which no figure of the search needs. */
  readonly resolved: ResolvedPlan
  readonly figures: {
    readonly price?: number
    readonly loadOhm: number
    readonly powerW: number
    readonly fullSineA: number
    readonly averageA: number
  }
}

export type Weighed<Found> =
  | { readonly found: Found; readonly rejection?: undefined }
  | { readonly found?: undefined; readonly rejection: Rejection }

/** The request as the plan works on it. */
function resolvedAs(plan: PlanRequest): ResolvedPlan {
  const { cabin: _, ...car } = plan.car
  return resolvedPlan({ ...plan, car }, assumptions())
}

function supplyHindrance({ current, cable, fuse, runs }: ReturnType<typeof planSupply>): Rejection | undefined {
  const refused = [current, cable, fuse].find(part => !part.done)
  if (refused !== undefined && !refused.done) return hindered('supply', refused.refusal.message)
  if (runs.missing !== undefined) return hindered('supply', `No branch cable to ${runs.missing} passes.`)
  const unsuited = current.done && current.outcome.cautions.find(({ code }) => code === 'amplifier-voltage-class')
  return unsuited ? hindered('stop-caution', unsuited.message) : undefined
}

function noLoad({ matching }: PlannedLoad): Rejection {
  const unpublished = 'No power is published for a load that these drivers can present.'
  return hindered('match', matching.done ? unpublished : matching.refusal.message)
}

export function electrics({ plan, price }: Combination): Weighed<Electrics> {
  const resolved = resolvedAs(plan)
  const load = planLoad(resolved)
  const { joined, wiring } = load
  if (joined === undefined) return { rejection: noLoad(load) }
  if (!wiring.done) return { rejection: hindered('match', wiring.refusal.message) }
  const drivers = planDrivers(resolved, joined)
  if (!drivers.done) return { rejection: hindered('driver-data', drivers.refusal.message) }
  const supply = planSupply(resolved, joined)
  const rejection = supplyHindrance(supply)
  if (rejection !== undefined || !supply.current.done) {
    return { rejection: rejection ?? hindered('supply', 'No current is known.') }
  }
  const { fullSineA, averageA } = supply.current.outcome.result.currents
  const figures = {
    ...present({ price }),
    loadOhm: joined.loadOhm,
    powerW: joined.powerW,
    fullSineA,
    averageA
  }
  return { found: { load, drivers, joined, supply, resolved, figures } }
}
