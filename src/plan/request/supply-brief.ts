/** What the electric rooms work from: the supply as the caller tells it, and once each what several of them need of it. */

import type { TurnOnRequest } from '../../contract/signals/signal-setup.ts'
import type { BatterySource } from '../../contract/supply/fuse.ts'
import type { CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { AmplifierOnSupply } from '../../contract/supply/supply-current.ts'
import type { PlanCar, PlanSignal, PlanSupply } from '../../contract/systems/plan-request.ts'
import { cableDefaults } from '../../domain/circuit/cable/defaults.ts'
import type { SurroundingsRequest } from '../../domain/circuit/fuse/protected-cable.ts'
import { amplifierVoltage } from '../../domain/circuit/load/converter-load.ts'
import { supplyDefaults } from '../../domain/circuit/source/defaults.ts'
import { present } from '../../domain/present.ts'
import { signalDefaults } from '../../domain/signal/defaults.ts'
import { planDefaults } from './defaults.ts'
import type { RunPart } from './part.ts'
import { type DrawSheet, drawSheet } from './plan-amplifier.ts'
import type { ResolvedPlan } from './resolved-plan.ts'

type Laid = SurroundingsRequest & Pick<CableChoiceRequest, 'conductor'>

export interface SupplyBrief {
  /** Of the plan this supply is part of. */
  readonly run: RunPart
  readonly supply: PlanSupply
  readonly drive: PlanCar['drive']
  /** The bass amplifier as the supply sees it, its power left out. */
  readonly bass: DrawSheet & Pick<AmplifierOnSupply, 'name'>
  /** What the amplifiers are made for [V]. */
  readonly amplifierV: number
  /** Drop allowed over trunk and branch together [V]. */
  readonly dropAllowedV: number
  /** Metal and surroundings of the cable from the battery. */
  readonly onTheWay: Laid
  /** Those of every cable at the amplifiers. */
  readonly inTheBoot: Laid
  readonly branchM: number
  /** Of a branch: a ground lead of its own, or the way back to the block of the returns. */
  readonly branchReturnM: number
  readonly returnBy: 'body' | 'cable'
  /** How the amplifiers are switched on, with the turn-on current of each. */
  readonly turnOn?: TurnOnRequest
  /** What the batteries drive into a fault; empty where too little is known. */
  readonly starter: BatterySource
  readonly second: BatterySource
}

function conductorOf({ conductor, insulationC, ambientC, spaces, bundledConductors }: PlanSupply): Laid {
  return present({ conductor, insulationC, ambientC, spaces, bundledConductors })
}

/** The boot, unless the caller knows the run to be cooler than that. */
function bootOf({ ambientC, spaces: _, ...rest }: Laid): Laid {
  return ambientC !== undefined && ambientC < cableDefaults.ambientCabinC.value
    ? { ...rest, ambientC }
    : { ...rest, spaces: ['boot'] }
}

/** Of a kind that says too little of its resistance the capacity would be refused. */
function strength({ chemistry, capacityAh, coldCrankingA, resistanceOhm }: BatterySource): BatterySource {
  const known = chemistry === undefined || chemistry === 'flooded' ? {} : present({ capacityAh })
  return { ...present({ chemistry, coldCrankingA, resistanceOhm }), ...known }
}

/** The starter battery, from what is said of it in either place. */
function starterOf({ source = {}, battery }: PlanSupply): BatterySource {
  const { openCircuitV } = source
  return { ...present({ openCircuitV }), ...strength({ ...battery, ...source }) }
}

/** One output switches every amplifier on the run. */
function turnOnOf({ turnOn }: PlanSignal, { otherAmplifiers }: PlanSupply): TurnOnRequest | undefined {
  if (turnOn === undefined || turnOn.loadsA !== undefined || otherAmplifiers === undefined) return turnOn
  const each = signalDefaults.remoteLoadA.value
  return { ...turnOn, loadsA: [each, ...otherAmplifiers.map(() => each)] }
}

export function supplyBrief({
  amplifier,
  car,
  supply,
  signal,
  run
}: Pick<ResolvedPlan, 'amplifier' | 'car' | 'supply' | 'signal' | 'run'>): SupplyBrief {
  const { systemVoltageV, converter, secondBattery = {}, dropLimitPercent, return: path } = supply
  const { name } = amplifier
  const amplifierV = amplifierVoltage(systemVoltageV, converter)
  const onTheWay = conductorOf(supply)
  const branchM = supply.branchLengthM ?? planDefaults.branchM.value
  return {
    run,
    supply,
    drive: car.drive,
    bass: { ...present({ name }), ...drawSheet(amplifier) },
    amplifierV,
    dropAllowedV: ((dropLimitPercent ?? supplyDefaults.dropLimitPercent.value) / 100) * amplifierV,
    onTheWay,
    inTheBoot: bootOf(onTheWay),
    branchM,
    branchReturnM: path.kind === 'chassis' ? (path.leadLengthM ?? planDefaults.groundLeadM.value) : branchM,
    returnBy: path.kind === 'chassis' ? 'body' : 'cable',
    ...present({ turnOn: turnOnOf(signal, supply) }),
    starter: starterOf(supply),
    second: strength(secondBattery)
  }
}
