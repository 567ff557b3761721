/** From the distribution block to each amplifier: judged by that amplifier's own terminal and fuses, in the heat of the boot. */
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { ChosenFuse } from '../../contract/supply/fuse.ts'
import type { CableChoice, CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { AmplifierOnSupply, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { Caution } from '../../domain/caution.ts'
import { resaid } from '../../domain/caution.ts'
import { cableJudgement } from '../../domain/circuit/cable/cable-judgement.ts'
import type { ReturnPath } from '../../domain/circuit/choice/cable-request.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { voltageClass } from '../../domain/circuit/fuse/fuse-families-iso-8820.ts'
import { fuseJudgement } from '../../domain/circuit/fuse/fuse-judgement.ts'
import { amplifierVoltage } from '../../domain/circuit/load/converter-load.ts'
import { supplyJudgement } from '../../domain/circuit/source/supply-judgement.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { type Part, runPart } from '../request/part.ts'
import { usual } from '../request/plan-usual.ts'
import { secondSource, starterSource } from './battery-sources.ts'
import { tooStrongAtBlock } from './fault-at-block.ts'
import { conductorOf } from './plan-conductor.ts'
import { type BranchRun, type PowerRun, sizeOf } from './plan-run.ts'

export interface Branches {
  /** Of every branch whose size passes, in the order of the amplifiers. */
  readonly runs: readonly BranchRun[]
  /** Of the first amplifier for which no size passes. */
  readonly missing?: string
  readonly cautions: readonly Caution[]
}

/** What bill, picture and steps call each; of two alike the later ones carry their number. */
export function namesOf(amplifiers: readonly AmplifierOnSupply[]): readonly string[] {
  return amplifiers.map(({ name }, index) => {
    if (name === undefined) return `amplifier ${index + 1}`
    const alike = amplifiers.slice(0, index).some(each => each.name === name)
    return alike ? `${name} (${index + 1})` : name
  })
}

type OnSupply = Pick<PlanRequest, 'supply'>

export const branchLengthM = ({ supply }: OnSupply): number => supply.branchLengthM ?? usual.branchM.value

/** A ground lead of its own, or the way back to the block of the returns. */
export function branchReturnM({ supply }: OnSupply): number {
  return supply.return.kind === 'chassis'
    ? (supply.return.leadLengthM ?? usual.groundLeadM.value)
    : branchLengthM({ supply })
}

/** Drop allowed over trunk and branch together [V]. */
export function dropAllowedV({ supply }: OnSupply): number {
  const percent = supply.dropLimitPercent ?? supplyJudgement.dropLimitPercent.value
  return (percent / 100) * amplifierVoltage(supply.systemVoltageV, supply.converter)
}

/** The boot, unless the caller knows the run to be cooler than that. */
export function bootSurroundings(request: PlanRequest) {
  const { ambientC, spaces: _, ...rest } = conductorOf(request)
  return ambientC !== undefined && ambientC < cableJudgement.ambientCabinC.value
    ? { ...rest, ambientC }
    : { ...rest, spaces: ['boot'] as const }
}

/** What its maker says of the bass amplifier; of the others only their own fuses are known. */
function sheetOf({ supply: { makerFuseA, terminalAreaM2 } }: PlanRequest, amplifier: AmplifierOnSupply, index: number) {
  const { onboardFusesA } = amplifier
  return {
    ...present({ onboardFusesA }),
    ...(index > 0 || makerFuseA === undefined ? {} : { makerFuseA }),
    ...(index > 0 || terminalAreaM2 === undefined ? {} : { terminalAreaM2 })
  }
}

/**
 * What its fuse may have to break: of a second battery right beside the block all of it; of the first what the trunk leaves,
 * which the usual families mostly break; of a converter nothing much.
 */
function faultOf({ supply }: PlanRequest, strong: boolean): Pick<CableChoiceRequest, 'source' | 'fuseTypes'> {
  const { secondBattery, systemVoltageV, converter, source } = supply
  const second = secondBattery === undefined ? {} : secondSource({ secondBattery })
  if (Object.keys(second).length > 0) return { source: second }
  if (strong) return { source: starterSource(supply) }
  const usualTypes = fuseJudgement.usualTypes[voltageClass(amplifierVoltage(systemVoltageV, converter))]
  return { fuseTypes: [...usualTypes], ...(converter === undefined ? present({ source }) : {}) }
}

function branchRequest(
  request: PlanRequest,
  amplifier: AmplifierOnSupply,
  index: number,
  sizing: SupplyCurrent['sizing'],
  dropLimitV: number,
  strong: boolean
): CableChoiceRequest {
  const { gaugeSystem, insulationMaterial, converter } = request.supply
  const systemVoltageV = amplifierVoltage(request.supply.systemVoltageV, converter)
  const path: ReturnPath = { kind: 'cable', lengthM: branchReturnM(request) }
  return {
    currentA: sizing.fullSineA,
    heavyCurrentA: sizing.heavyA,
    systemVoltageV,
    positiveLengthM: branchLengthM(request),
    return: path,
    dropLimitV,
    ...bootSurroundings(request),
    ...sheetOf(request, amplifier, index),
    ...faultOf(request, strong),
    ...present({ gaugeSystem, insulationMaterial })
  }
}

/** What a branch says of its own fuse and terminal; voltages and faults are those of the whole circuit. */
const ofTheBranch: readonly CautionCode[] = [
  'maker-fuse-too-small',
  'maker-fuse-not-obeyed',
  'maker-fuse-used',
  'no-fuse-rating',
  'fuse-above-onboard',
  'parallel-runs'
]

export function cautionsOf(part: Branched, name: string): readonly Caution[] {
  if (!part.done) return []
  return part.outcome.cautions
    .filter(({ code }) => ofTheBranch.includes(code))
    .map(({ at: _, ...caution }) => resaid(caution, say('of-branch', { name, message: caution.said.message })))
}

type Branched = Part<CableChoiceRequest, CableChoice>

/** With a fuse of the usual families, or, where the battery drives more than they break, of one that breaks it. */
function branchPart(task: (strong: boolean) => CableChoiceRequest, tooStrong: (fuse: ChosenFuse) => boolean): Branched {
  const part = runPart(task(false), chooseCable)
  const fuse = part.done ? part.outcome.result.fuse : undefined
  return fuse !== undefined && tooStrong(fuse) ? runPart(task(true), chooseCable) : part
}

/**
 * @param trunk  what the first battery reaches the block over
 * @param dropLimitV  what the trunk leaves of the drop allowed [V]
 */
export function planBranches(
  request: PlanRequest,
  amplifiers: readonly AmplifierOnSupply[],
  current: SupplyCurrent,
  trunk: PowerRun | undefined,
  dropLimitV: number
): Branches {
  const returnBy = request.supply.return.kind === 'chassis' ? ('body' as const) : ('cable' as const)
  const names = namesOf(amplifiers)
  const planned = amplifiers.map((amplifier, index) => {
    const sizing = current.amplifiers[index]?.sizing ?? current.sizing
    const part = branchPart(
      strong => branchRequest(request, amplifier, index, sizing, dropLimitV, strong),
      fuse => trunk !== undefined && tooStrongAtBlock(request, trunk, { fuse })
    )
    const name = names[index] ?? ''
    const size = part.done ? sizeOf(part.outcome.result) : undefined
    const fuse = part.done ? part.outcome.result.fuse : undefined
    const run: BranchRun | undefined =
      size === undefined || size.runs > 1
        ? undefined
        : {
            ...size,
            amplifier: name,
            positiveLengthM: branchLengthM(request),
            returnBy,
            returnLengthM: branchReturnM(request),
            ...present({ fuse })
          }
    return { name, run, cautions: cautionsOf(part, `Branch to ${name}`) }
  })
  const missing = planned.find(({ run }) => run === undefined)?.name
  return {
    runs: planned.flatMap(({ run }) => (run === undefined ? [] : [run])),
    ...present({ missing }),
    cautions: planned.flatMap(({ cautions }) => cautions)
  }
}
