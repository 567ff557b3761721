/** The request as the plan works on it: one amplifier, every silent field filled in and recorded. */

import type { PlanEnclosure } from '../../contract/systems/plan-enclosure.ts'
import type { PlanCar, PlanRequest, PlanSignal, PlanSupply } from '../../contract/systems/plan-request.ts'
import type { DesignGoal } from '../../contract/systems/words.ts'
import type { Assumptions } from '../../domain/assume.ts'
import { planDefaults } from './defaults.ts'
import type { RunPart } from './part.ts'
import { withoutDraw } from './plan-amplifier.ts'
import { crossoverFor } from './plan-crossover.ts'
import { type Finish, resolvedFinish } from './plan-finish.ts'
import { resolvedBoard } from './plan-imperial.ts'
import { leafletBox } from './plan-leaflet.ts'
import { withInductance, withRating } from './plan-ratings.ts'
import { resolvedDriver, resolvedSpace } from './plan-space.ts'
import { withTravel } from './plan-travel.ts'
import { resolvedWorkshop, type Workshop } from './plan-workshop.ts'

type Unresolved = Pick<PlanRequest, 'finish' | 'car' | 'supply' | 'signal'>

interface ResolvedFields {
  readonly finish: Finish
  readonly car: PlanCar & { readonly speakerCableLengthM: number }
  readonly supply: PlanSupply
  readonly signal: PlanSignal & { readonly mainsLowHz: number }
  /** Where the bass hands over to the front loudspeakers; box, response and signal take the same corner. */
  readonly crossoverHz: number
}
export type ResolvedPlan = PlanRequest & ResolvedFields & { readonly workshop: Workshop; readonly run: RunPart }

/** A block, or a converter, stands before the amplifiers. */
export const hasBranches = ({ otherAmplifiers, secondBattery, converter }: PlanSupply): boolean =>
  otherAmplifiers !== undefined || secondBattery !== undefined || converter !== undefined

function resolvedSupply(supply: PlanSupply, assumed: Assumptions): PlanSupply {
  const { branchM, groundLeadM } = planDefaults
  const { return: path } = supply
  const lead = (given: number | undefined) => assumed.take(given, 'supply.return.leadLengthM', groundLeadM)
  const branch = () => assumed.take(supply.branchLengthM, 'supply.branchLengthM', branchM)
  return {
    ...supply,
    return: path.kind === 'chassis' ? { ...path, leadLengthM: lead(path.leadLengthM) } : path,
    ...(hasBranches(supply) ? { branchLengthM: branch() } : {})
  }
}

/** What a plan and a search settle in the same way. */
export function resolvedFields(
  { finish: wish, car, supply, signal }: Unresolved,
  assumed: Assumptions
): ResolvedFields {
  const { speakerCableM, mainsLowHz } = planDefaults
  const finish = resolvedFinish(wish, assumed)
  const space = resolvedSpace(car, finish, assumed)
  const speakerCableLengthM = assumed.take(car.speakerCableLengthM, 'car.speakerCableLengthM', speakerCableM)
  const power = resolvedSupply(supply, assumed)
  const lowHz = assumed.take(signal.mainsLowHz, 'signal.mainsLowHz', mainsLowHz)
  return {
    finish,
    car: { ...car, space, speakerCableLengthM },
    supply: power,
    signal: { ...signal, mainsLowHz: lowHz },
    crossoverHz: crossoverFor(lowHz)
  }
}

/** A box that is not given by its volume or Qtc is searched for a wish. */
function resolvedEnclosure(enclosure: PlanEnclosure = {}, assumed: Assumptions): PlanEnclosure {
  if (enclosure.netVolumeM3 !== undefined || enclosure.qtc !== undefined) return enclosure
  return { ...enclosure, goal: assumed.take<DesignGoal>(enclosure.goal, 'enclosure.goal', planDefaults.goal) }
}

/** Ratings that the sheet leaves out; of a driver that nothing is known of no travel is guessed, for nothing rests on it. */
function ratedDriver(request: PlanRequest, driver: PlanRequest['driver'], assumed: Assumptions): PlanRequest['driver'] {
  const rated = withRating(driver, assumed)
  return leafletBox(request) === undefined ? withTravel(withInductance(rated, assumed), assumed) : rated
}

/** @param run  of the work this plan is part of */
export function resolvedPlan(request: PlanRequest, assumed: Assumptions, run: RunPart): ResolvedPlan {
  const fields = resolvedFields(request, assumed)
  return {
    ...request,
    driver: ratedDriver(request, resolvedDriver({ driver: request.driver, car: fields.car }, assumed), assumed),
    board: resolvedBoard(request, assumed),
    amplifier: withoutDraw(request.amplifier),
    enclosure: resolvedEnclosure(request.enclosure, assumed),
    workshop: resolvedWorkshop(request.workshop, request.board.sheet?.kerfM, assumed),
    run,
    ...fields
  }
}
