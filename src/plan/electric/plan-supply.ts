/** Amperes: what all amplifiers draw, the cable that carries it, the fuse that guards the cable. */
import type { CableChoice, CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { AmplifierOnSupply, CurrentRequest, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { FuseAnswer, FuseRequest } from '../../contract/supply/supply-fuses.ts'
import type { PlanAmplifier, PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Caution } from '../../domain/caution.ts'
import type { ReturnPath } from '../../domain/circuit/choice/cable-request.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { rateFuse } from '../../domain/circuit/fuse/rate-fuse.ts'
import { supplyCurrent } from '../../domain/circuit/load/supply-current.ts'
import { supplyJudgement } from '../../domain/circuit/source/supply-judgement.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import { type Part, runPart, waitingFor } from '../request/part.ts'
import { drawSheet } from '../request/plan-amplifier.ts'
import { branchLengthM, branchReturnM, dropAllowedV, namesOf, planBranches } from './plan-branches.ts'
import { conductorOf } from './plan-conductor.ts'
import type { JoinedDrivers } from './plan-load.ts'
import { type BranchRun, dropOf, type PowerRun, sizeOf } from './plan-run.ts'

export type CurrentPart = Part<CurrentRequest, SupplyCurrent>
export type CablePart = Part<CableChoiceRequest, CableChoice>
export type FusePart = Part<FuseRequest, FuseAnswer>

export interface PlannedSupply {
  readonly current: CurrentPart
  readonly cable: CablePart
  readonly fuse: FusePart
}

/** The power side as it is laid; a trunk without a size, or a branch without one, is absent. */
export interface PowerRuns {
  readonly trunk?: PowerRun
  readonly branches: readonly BranchRun[]
  /** Of the first amplifier for whose branch no size passes. */
  readonly missing?: string
  /** Of the amplifiers on the run, the bass amplifier first. */
  readonly amplifiers: readonly string[]
  readonly cautions: readonly Caution[]
  readonly assumed: readonly Assumption[]
}

/** Sized for the most the amplifier may draw at the wired load, not for where the gain is left. */
function bassAmplifier(amplifier: PlanAmplifier, { supplyPowerW, loadOhm }: JoinedDrivers): AmplifierOnSupply {
  const { name } = amplifier
  return { ...present({ name }), ...drawSheet(amplifier), powerW: supplyPowerW, loadOhm }
}

function currentRequest({ amplifier, car, supply }: PlanRequest, joined: JoinedDrivers): CurrentRequest {
  const { systemVoltageV, charging, battery, secondBattery, capacitor, otherAmplifiers = [] } = supply
  return {
    amplifiers: [bassAmplifier(amplifier, joined), ...otherAmplifiers],
    systemVoltageV,
    ...present({ drive: car.drive, charging, battery, secondBattery, capacitor })
  }
}

/** Every amplifier draws most while the battery is charged: then the run is judged at that voltage too. */
function sizedAtV({ amplifiers }: SupplyCurrent, systemVoltageV: number): number {
  const lowestV = Math.min(...amplifiers.map(({ sizing }) => sizing.voltageV))
  return Math.max(lowestV, systemVoltageV)
}

/** With a block the ground leads belong to the branches; the trunk returns through the body or its own cable. */
function trunkReturn(path: ReturnPath, shared: boolean): ReturnPath {
  return shared && path.kind === 'chassis' ? { ...path, leadLengthM: 0 } : path
}

/** Of the drop allowed, the trunk's share by its length; with one amplifier all of it. */
function trunkDrop(request: PlanRequest, shared: boolean): Pick<CableChoiceRequest, 'dropLimitPercent' | 'dropLimitV'> {
  const { dropLimitPercent, positiveLengthM, return: path } = request.supply
  if (!shared) return dropLimitPercent === undefined ? {} : { dropLimitPercent }
  const trunkM = positiveLengthM + (path.kind === 'cable' ? path.lengthM : 0)
  return { dropLimitV: (dropAllowedV(request) * trunkM) / (trunkM + branchLengthM(request) + branchReturnM(request)) }
}

/** Terminal and fuses of the amplifier judge the trunk only where the trunk ends in it. */
function trunkEnd({ supply, amplifier }: PlanRequest, shared: boolean) {
  if (shared) return {}
  const { makerFuseA, terminalAreaM2 } = supply
  const { onboardFusesA } = drawSheet(amplifier)
  return present({ makerFuseA, terminalAreaM2, onboardFusesA })
}

function cableRequest(request: PlanRequest, current: SupplyCurrent, shared: boolean): CableChoiceRequest {
  const { systemVoltageV, positiveLengthM, return: path, gaugeSystem, source } = request.supply
  const { sizing } = current
  const sourceVoltageV = sizedAtV(current, systemVoltageV)
  return {
    systemVoltageV,
    ...(sourceVoltageV === systemVoltageV ? {} : { sourceVoltageV }),
    positiveLengthM,
    return: trunkReturn(path, shared),
    ...conductorOf(request),
    ...present({ gaugeSystem, source }),
    ...trunkDrop(request, shared),
    ...trunkEnd(request, shared),
    currentA: sizing.fullSineA,
    heavyCurrentA: sizing.heavyA
  }
}

/** The fuse of each run of the trunk. */
function fuseRequest(
  request: PlanRequest,
  { sizing }: SupplyCurrent,
  { designation, runs }: { readonly designation: string; readonly runs: number },
  shared: boolean
): FuseRequest {
  const { systemVoltageV, makerFuseA, source, fuseDistanceM, sheathed } = request.supply
  return {
    currentA: sizing.fullSineA / runs,
    heavyCurrentA: sizing.heavyA / runs,
    systemVoltageV,
    cable: { designation, ...conductorOf(request) },
    ...(makerFuseA === undefined || shared || runs > 1 ? {} : { makerFuseA }),
    ...present({ source, distanceM: fuseDistanceM, sheathed })
  }
}

function trunkRun(
  { supply }: PlanRequest,
  size: { readonly designation: string; readonly runs: number },
  fuse: FusePart,
  shared: boolean
): PowerRun {
  const { positiveLengthM, return: path } = supply
  const leadM = shared ? 0 : ((path.kind === 'chassis' ? path.leadLengthM : 0) ?? supplyJudgement.groundLeadM)
  return {
    ...size,
    positiveLengthM,
    returnBy: path.kind === 'chassis' ? 'body' : 'cable',
    returnLengthM: path.kind === 'cable' ? path.lengthM : leadM,
    ...(fuse.done ? { fuse: fuse.outcome.result.fuse } : {})
  }
}

const NO_RUNS = { branches: [], cautions: [], assumed: [] } as const

/** The share of trunk and branch rests on a default of the plan: the parts only see the result. */
function dropAssumed({ supply }: PlanRequest, shared: boolean): readonly Assumption[] {
  if (!shared || supply.dropLimitPercent !== undefined) return []
  const { value, why } = supplyJudgement.dropLimitPercent
  return [{ field: 'supply.dropLimitPercent', value, why: `${why}; trunk and branch share it by their lengths` }]
}

function laidOut(request: PlanRequest, current: CurrentPart & { readonly done: true }) {
  const drawn = current.outcome.result
  const { amplifiers } = current.request
  const names = namesOf(amplifiers)
  const shared = amplifiers.length > 1
  const cable = runPart(cableRequest(request, drawn, shared), chooseCable)
  if (!cable.done) {
    const part = waitingFor('a cable')
    return {
      parts: { current, cable, fuse: part },
      runs: { ...NO_RUNS, amplifiers: names }
    }
  }
  const size = sizeOf(cable.outcome.result)
  const fuse =
    size === undefined
      ? waitingFor('a cable that passes')
      : runPart(fuseRequest(request, drawn, size, shared), rateFuse)
  const trunk = size === undefined ? undefined : trunkRun(request, size, fuse, shared)
  const branches = planBranches(request, amplifiers, drawn, dropAllowedV(request) - dropOf(cable.outcome.result))
  return {
    parts: { current, cable, fuse },
    runs: {
      ...present({ trunk, missing: branches.missing }),
      branches: branches.runs,
      amplifiers: names,
      cautions: branches.cautions,
      assumed: dropAssumed(request, shared)
    }
  }
}

export function planSupply(
  request: PlanRequest,
  joined: JoinedDrivers | undefined
): PlannedSupply & { readonly runs: PowerRuns } {
  if (joined === undefined) {
    const part = waitingFor('the power the amplifier gives into the wired load')
    return {
      ...{ current: part, cable: part, fuse: part },
      runs: { ...NO_RUNS, amplifiers: [] }
    }
  }
  const current = runPart(currentRequest(request, joined), supplyCurrent)
  if (!current.done) {
    const part = waitingFor('the current')
    return {
      current,
      ...{ cable: part, fuse: part },
      runs: { ...NO_RUNS, amplifiers: [] }
    }
  }
  const { parts, runs } = laidOut(request, current)
  return { ...parts, runs }
}
