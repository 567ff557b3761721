/** From the battery to the amplifier, the distribution block or the charger of a second battery: what its cable and fuse are asked. */

import type { CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { FuseAnswer, FuseRequest } from '../../contract/supply/supply-fuses.ts'
import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { ReturnPath } from '../../domain/circuit/choice/cable-request.ts'
import { supplyDefaults } from '../../domain/circuit/source/defaults.ts'
import type { Assumption } from '../../domain/outcome.ts'
import { present } from '../../domain/present.ts'
import type { Part } from '../request/part.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { wiringDefaults } from './defaults.ts'
import { chargerInputA, type SecondLink } from './second-battery.ts'

export type FusePart = Part<FuseRequest, FuseAnswer>

/** What decides how the trunk is laid. */
interface TrunkTask {
  readonly current: SupplyCurrent
  /** Whether it ends in a block, not in an amplifier. */
  readonly shared: boolean
  readonly link?: SecondLink
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
function trunkDrop(brief: SupplyBrief, shared: boolean): Pick<CableChoiceRequest, 'dropLimitPercent' | 'dropLimitV'> {
  const { dropLimitPercent, positiveLengthM, return: path, converter } = brief.supply
  // a converter holds its output, whatever the trunk loses
  if (!shared || converter !== undefined) return dropLimitPercent === undefined ? {} : { dropLimitPercent }
  const trunkM = positiveLengthM + (path.kind === 'cable' ? path.lengthM : 0)
  return { dropLimitV: (brief.dropAllowedV * trunkM) / (trunkM + brief.branchM + brief.branchReturnM) }
}

/** Terminal and fuses of the amplifier judge the trunk only where the trunk ends in it. */
function trunkEnd({ supply, bass }: SupplyBrief, shared: boolean) {
  if (shared) return {}
  const { makerFuseA, terminalAreaM2 } = supply
  const { onboardFusesA } = bass
  return present({ makerFuseA, terminalAreaM2, onboardFusesA })
}

/** A charger takes its current for hours, a converter at most its rating; else that of all amplifiers. */
function trunkLoad({ current: { sizing, converter }, link }: TrunkTask) {
  if (converter !== undefined) return { currentA: converter.ratedInputA, heavyCurrentA: converter.heavyInputA }
  const inputA = link?.kind === 'charger' ? chargerInputA(link.ratedA) : undefined
  return { currentA: inputA ?? sizing.fullSineA, heavyCurrentA: inputA ?? sizing.heavyA }
}

const sourceOf = ({ starter }: SupplyBrief): Pick<CableChoiceRequest, 'source'> =>
  Object.keys(starter).length === 0 ? {} : { source: starter }

export function trunkCable(brief: SupplyBrief, task: TrunkTask): CableChoiceRequest {
  const { systemVoltageV, positiveLengthM, return: path, gaugeSystem, runs } = brief.supply
  const { current, shared } = task
  const sourceVoltageV = current.converter === undefined ? sizedAtV(current, systemVoltageV) : systemVoltageV
  return {
    systemVoltageV,
    ...(sourceVoltageV === systemVoltageV ? {} : { sourceVoltageV }),
    positiveLengthM,
    return: trunkReturn(path, shared),
    ...brief.onTheWay,
    ...present({ gaugeSystem, runs }),
    ...sourceOf(brief),
    ...trunkDrop(brief, shared),
    ...trunkEnd(brief, shared),
    ...trunkLoad(task)
  }
}

/** The fuse of each run of the trunk. */
export function trunkFuse(
  brief: SupplyBrief,
  task: TrunkTask,
  { designation, runs }: { readonly designation: string; readonly runs: number }
): FuseRequest {
  const { systemVoltageV, makerFuseA, fuseDistanceM, sheathed } = brief.supply
  const { currentA, heavyCurrentA } = trunkLoad(task)
  return {
    currentA: currentA / runs,
    heavyCurrentA: heavyCurrentA / runs,
    systemVoltageV,
    cable: { designation, ...brief.onTheWay },
    ...present({
      makerFuseA: makerFuseA === undefined || task.shared || runs > 1 ? undefined : makerFuseA,
      linksTwoBatteries: task.link !== undefined && task.link.kind !== 'charger' ? true : undefined
    }),
    ...sourceOf(brief),
    ...present({ distanceM: fuseDistanceM, sheathed })
  }
}

export function trunkRun(
  { supply, returnBy }: SupplyBrief,
  size: { readonly designation: string; readonly runs: number },
  part: FusePart,
  { shared, link }: TrunkTask
): PowerRun {
  const { positiveLengthM, return: path } = supply
  const leadM = shared ? 0 : ((path.kind === 'chassis' ? path.leadLengthM : 0) ?? supplyDefaults.groundLeadM.value)
  const fuse = part.done ? part.outcome.result.fuse : undefined
  return {
    ...size,
    positiveLengthM,
    returnBy,
    returnLengthM: path.kind === 'cable' ? path.lengthM : leadM,
    ...present({ fuse }),
    // the far end is fed by the second battery, and of three cables by the two others: a source as well
    ...((link === undefined || link.kind === 'charger') && size.runs < wiringDefaults.runsFusedAtEnd.value
      ? {}
      : present({ endFuse: fuse }))
  }
}

/** The share of trunk and branch rests on a default of the plan: the parts only see the result. */
export function dropAssumed({ supply }: SupplyBrief, shared: boolean): readonly Assumption[] {
  if (!shared || supply.dropLimitPercent !== undefined) return []
  const { value, why } = supplyDefaults.dropLimitPercent
  return [{ field: 'supply.dropLimitPercent', value, why: `${why}; main cable and branch share it by their lengths` }]
}
