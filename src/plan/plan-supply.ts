/** Amperes: what all amplifiers draw, the cable that carries it, the fuse that guards the cable. */
import type { BatterySource } from '../domain/fuse/battery-source.ts'
import { type FuseAnswer, type FuseRequest, rateFuse } from '../domain/fuse/rate-fuse.ts'
import type { AmplifierOnSupply } from '../domain/supply/amplifier-draw.ts'
import type { CableChoiceRequest } from '../domain/supply/cable-request.ts'
import { type CableChoice, chooseCable } from '../domain/supply/choose-cable.ts'
import { type CurrentRequest, type SupplyCurrent, supplyCurrent } from '../domain/supply/supply-current.ts'
import { attempt, type Part, waitingFor } from './part.ts'
import { conductorOf } from './plan-conductor.ts'
import { type FeederPart, planFeeder } from './plan-feeder.ts'
import type { JoinedDrivers } from './plan-load.ts'
import type { PlanAmplifier, PlanRequest } from './plan-request.ts'

export type CurrentPart = Part<CurrentRequest, SupplyCurrent>
export type CablePart = Part<CableChoiceRequest, CableChoice>
export type FusePart = Part<FuseRequest, FuseAnswer>

type Run = Pick<
  CableChoiceRequest,
  | 'systemVoltageV'
  | 'positiveLengthM'
  | 'return'
  | 'conductor'
  | 'gaugeSystem'
  | 'insulationC'
  | 'ambientC'
  | 'spaces'
  | 'bundledConductors'
  | 'dropLimitPercent'
  | 'makerFuseA'
  | 'terminalAreaM2'
>

export interface PlanSupply extends Run, Pick<CurrentRequest, 'charging' | 'battery' | 'secondBattery' | 'capacitor'> {
  /** On the same run, behind a distribution block. */
  readonly otherAmplifiers?: readonly AmplifierOnSupply[]
  /** From the block to each amplifier. */
  readonly branchLengthM?: number
  readonly source?: BatterySource
  /** Battery terminal to fuse, along the cable. */
  readonly fuseDistanceM?: number
  readonly sheathed?: boolean
}

export interface PlannedSupply {
  readonly current: CurrentPart
  readonly cable: CablePart
  readonly fuse: FusePart
  readonly feeder: FeederPart
}

/** Sized for the most the amplifier may draw at the wired load, not for where the gain is left. */
function bassAmplifier({ draw, name }: PlanAmplifier, { supplyPowerW, loadOhm }: JoinedDrivers): AmplifierOnSupply {
  return { ...(name === undefined ? {} : { name }), ...draw, powerW: supplyPowerW, loadOhm }
}

function currentRequest({ amplifier, supply }: PlanRequest, joined: JoinedDrivers): CurrentRequest {
  const { systemVoltageV, charging, battery, secondBattery, capacitor, otherAmplifiers = [] } = supply
  return {
    amplifiers: [bassAmplifier(amplifier, joined), ...otherAmplifiers],
    systemVoltageV,
    ...(charging === undefined ? {} : { charging }),
    ...(battery === undefined ? {} : { battery }),
    ...(secondBattery === undefined ? {} : { secondBattery }),
    ...(capacitor === undefined ? {} : { capacitor })
  }
}

function cableRequest({ supply, amplifier }: PlanRequest, { currents }: SupplyCurrent): CableChoiceRequest {
  const {
    charging: _c,
    battery: _b,
    secondBattery: _s,
    capacitor: _k,
    otherAmplifiers,
    fuseDistanceM: _d,
    sheathed: _h,
    branchLengthM: _l,
    ...run
  } = supply
  const fuses = amplifier.draw.onboardFusesA
  return {
    ...run,
    currentA: currents.fullSineA,
    heavyCurrentA: currents.heavyA,
    ...(fuses === undefined || otherAmplifiers !== undefined ? {} : { onboardFusesA: fuses })
  }
}

function fuseRequest(
  request: PlanRequest,
  { currents }: SupplyCurrent,
  { cable }: CableChoice
): FuseRequest | undefined {
  if (cable === undefined) return undefined
  const { systemVoltageV, makerFuseA, source, fuseDistanceM, sheathed } = request.supply
  return {
    currentA: currents.fullSineA,
    heavyCurrentA: currents.heavyA,
    systemVoltageV,
    cable: { designation: cable.designation, ...conductorOf(request) },
    ...(makerFuseA === undefined ? {} : { makerFuseA }),
    ...(source === undefined ? {} : { source }),
    ...(fuseDistanceM === undefined ? {} : { distanceM: fuseDistanceM }),
    ...(sheathed === undefined ? {} : { sheathed })
  }
}

export function planSupply(request: PlanRequest, joined: JoinedDrivers | undefined): PlannedSupply {
  if (joined === undefined) {
    const part = waitingFor('the power the amplifier gives into the wired load')
    return { current: part, cable: part, fuse: part, feeder: part }
  }
  const current = attempt(currentRequest(request, joined), supplyCurrent)
  if (!current.done) {
    const part = waitingFor('the current')
    return { current, cable: part, fuse: part, feeder: part }
  }
  const cable = attempt(cableRequest(request, current.outcome.result), chooseCable)
  if (!cable.done) return { current, cable, fuse: waitingFor('a cable'), feeder: waitingFor('a cable') }
  const question = fuseRequest(request, current.outcome.result, cable.outcome.result)
  const fuse = question === undefined ? waitingFor('a cable that passes') : attempt(question, rateFuse)
  return {
    current,
    cable,
    fuse,
    feeder: planFeeder(request, current.request.amplifiers, current.outcome.result, cable)
  }
}
