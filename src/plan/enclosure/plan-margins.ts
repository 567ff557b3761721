/** What the limits of the parts cost the planned box, and what moves when it is changed a little: closed forms beside its own figures. */

import type { SystemFigures } from '../../contract/systems/plan-choice.ts'
import type { PlanHeadroom, PlanWhatIf } from '../../contract/systems/plan-margins.ts'
import { assumptions } from '../../domain/assume.ts'
import { cabinGain } from '../../domain/cabin/cabin-gain.ts'
import { COMPARED_HZ } from '../../domain/enclosure/comparison/defaults.ts'
import { limitDefaults } from '../../domain/enclosure/limits/defaults.ts'
import { present } from '../../domain/present.ts'
import { worded } from '../../domain/say.ts'
import { mean } from '../../numeric/mean.ts'
import type { DriveLimits } from '../designer/evaluate/box-response.ts'
import type { DriverWish } from '../designer/evaluate/driver-tables.ts'
import { type CostedWay, costedWays, reachedLimits } from '../designer/variations/limits-cost.ts'
import type { Spot, SpotDrive } from '../designer/variations/spot.ts'
import { type SpotLimits, type SpotSolver, spotSolver } from '../designer/variations/spot-solver.ts'
import { changedFigures } from '../designer/variations/what-if.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import type { BoxBrief } from '../request/box-brief.ts'
import { planDefaults } from '../request/defaults.ts'
import { drivenGroup, plateauAtOneVolt } from './driven-group.ts'
import { headroomText } from './headroom-text.ts'
import { protectiveCornerHz, type ResponsePart } from './parts/plan-response.ts'
import type { Setting } from './parts/setting.ts'

type Done<Part> = Part & { readonly done: true }

interface Margins {
  readonly headroom: PlanHeadroom
  readonly whatIf: PlanWhatIf
}

/** Leaks and the friction of the port in one, as losses in parallel. */
function lossQ(leakQ: number | undefined, portQ: number | undefined): number | undefined {
  if (leakQ === undefined || portQ === undefined) return leakQ ?? portQ
  return 1 / (1 / leakQ + 1 / portQ)
}

function spotOf({ radiators }: BoxBrief, { request }: Done<ResponsePart>): Spot | undefined {
  const { enclosure } = request
  if (enclosure.kind === 'custom' || enclosure.rear === undefined || enclosure.front !== undefined) return undefined
  const { netVolumeM3, leakQ, port, passiveRadiators } = enclosure.rear
  if (passiveRadiators !== undefined) {
    const { count = 1, massKg } = passiveRadiators
    if (radiators === undefined) return undefined
    // the limits of the response tell whether the cones lie flat
    const isFlat = (request.limits?.passiveRadiatorXmaxM ?? Infinity) < radiators.unit.travelM
    return { netVolumeM3, radiators: { unit: radiators.unit, count, massKg, isFlat }, ...present({ leakQ }) }
  }
  if (port === undefined) return { netVolumeM3 }
  const { count = 1, areaM2, lengthM, endFactor } = port
  if (areaM2 === undefined || lengthM === undefined || endFactor === undefined) return undefined
  return { netVolumeM3, port: { count, areaM2, lengthM, endFactor }, ...present({ leakQ: lossQ(leakQ, port.lossQ) }) }
}

/** What holds the levels of the response back. */
function shownLimits({ request }: Done<ResponsePart>, limits: DriveLimits): SpotLimits {
  const { ratedV, duty } = limits
  const { airSpeedMPerS = limitDefaults.airSpeedMPerS.value } = request.limits ?? {}
  const sineV = ratedV === undefined ? undefined : ratedV * Math.sqrt(duty)
  const drive = { ...limits, duty: limitDefaults.dutyFactor.value, ...present({ ratedV: sineV }) }
  return { drive, airSpeedMPerS, travels: true }
}

function solverOf(brief: BoxBrief, wish: DriverWish, limits: DriveLimits, response: Done<ResponsePart>): SpotSolver {
  const { cabin, airSpeedMPerS, crossoverHz } = brief
  const { soundSpeedMPerS } = wish.air
  return spotSolver({
    wish,
    limits,
    airSpeedMPerS,
    shown: shownLimits(response, limits),
    lowPass: { cornerHz: crossoverHz, order: planDefaults.crossoverOrder.value },
    musicFromHz: limitDefaults.programmeFromHz.value,
    seatGainDb: frequenciesHz =>
      cabin === undefined
        ? new Float64Array(frequenciesHz.length)
        : Float64Array.from(cabinGain(cabin, soundSpeedMPerS, frequenciesHz, assumptions()).gainDb),
    plateauPa: plateauAtOneVolt(wish),
    comparedHz: COMPARED_HZ
  })
}

interface Told {
  readonly figures: SystemFigures
  readonly joined: JoinedDrivers
  readonly response: Done<ResponsePart>
}

const shifted = (planned: readonly number[], from: readonly number[], to: readonly number[]) =>
  planned.map((level, k) => level + (to[k] as number) - (from[k] as number))

/** A figure of the plan, moved as the closed form moves. */
const moved = (planned: number | undefined, from: number | undefined, to: number | undefined) =>
  planned === undefined || from === undefined || to === undefined ? undefined : planned * (to / from)

const powerAt = ({ loadOhm, outputs }: JoinedDrivers, voltageV: number) => (outputs * voltageV ** 2) / loadOhm

function whatIfOf(solver: SpotSolver, spot: Spot, drive: SpotDrive, { figures, joined, response }: Told): PlanWhatIf {
  const rows = changedFigures(solver, spot, drive)
  const [planned] = rows
  if (planned === undefined) return []
  const { coneExcursionOfXmax } = response.outcome.result.limits?.atDrive ?? {}
  return rows.map(({ change, factor, spot: at, ...heard }) => ({
    change,
    factor,
    netVolumeM3: at.netVolumeM3,
    levelDb: shifted(figures.levelDb, planned.levelDb, heard.levelDb),
    againstPlanDb: mean(heard.levelDb) - mean(planned.levelDb),
    heldPowerW: powerAt(joined, heard.heldV),
    ...present({
      tuningHz: moved(figures.tuningHz, planned.tuningHz, heard.tuningHz),
      f3Hz: moved(figures.f3Hz, planned.f3Hz, heard.f3Hz),
      coneOfXmax: moved(coneExcursionOfXmax, planned.coneOfXmax, heard.coneOfXmax),
      airSpeedMPerS: moved(figures.airSpeedMPerS, planned.airSpeedMPerS, heard.airSpeedMPerS)
    })
  }))
}

function wayOf({ way, spot, drive, levelDb, againstPlanDb }: CostedWay, planned: CostedWay, { figures, joined }: Told) {
  return {
    way,
    powerW: powerAt(joined, drive.voltageV),
    levelDb: shifted(figures.levelDb, planned.levelDb, levelDb),
    againstPlanDb,
    ...present({
      highPassHz: drive.highPassHz,
      netVolumeM3: spot === planned.spot ? undefined : spot.netVolumeM3
    })
  }
}

/** @returns none where the box is of another kind than the closed forms know */
export function planMargins(setting: Setting, told: Told): Margins | undefined {
  const { response } = told
  const { brief, joined } = setting
  const spot = spotOf(brief, response)
  if (spot === undefined) return undefined
  const { wish, limits: held, leastM3 } = drivenGroup(setting)
  const { springShare: _, ...limits } = held
  const solver = solverOf(brief, wish, limits, response)
  const highPassHz = protectiveCornerHz(response.outcome.result, response.request)
  const drive = { voltageV: joined.targetVoltageV, ...present({ highPassHz }) }
  const usableV = joined.targetVoltageV * Math.sqrt(joined.usablePowerW / joined.powerW)
  const problem = { solver, spot, drive, usableV, airSpeedMPerS: brief.airSpeedMPerS, leastM3 }
  const costed = costedWays(problem)
  const ways = costed.map(each => wayOf(each, costed[0] as CostedWay, told))
  const limitsReached = reachedLimits(problem).map(({ limit, voltageV, atHz }) => ({
    limit,
    powerW: powerAt(joined, voltageV),
    atHz
  }))
  return {
    headroom: {
      ...worded({ text: headroomText(limitsReached, ways, joined.usablePowerW) }),
      limits: limitsReached,
      ways
    },
    whatIf: whatIfOf(solver, spot, drive, told)
  }
}
