/** From the distribution block to each amplifier: judged by that amplifier's own terminal and fuses, in the heat of the boot. */

import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import type { ChosenFuse } from '../../contract/supply/fuse.ts'
import type { CableChoice, CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { AmplifierOnSupply, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type { PowerRun } from '../../contract/systems/plan-circuit.ts'
import type { Caution } from '../../domain/caution.ts'
import { resaid } from '../../domain/caution.ts'
import type { ReturnPath } from '../../domain/circuit/choice/cable-request.ts'
import { chooseCable } from '../../domain/circuit/choice/choose-cable.ts'
import { voltageClass } from '../../domain/circuit/fuse/fuse-families-iso-8820.ts'
import { usualFuseTypes } from '../../domain/circuit/fuse/fuse-rating.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import type { Part } from '../request/part.ts'
import type { SupplyBrief } from '../request/supply-brief.ts'
import { tooStrongAtBlock } from './fault-at-block.ts'
import { type BranchRun, sizeOf } from './plan-run.ts'

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

/** What its maker says of the bass amplifier; of the others only their own fuses are known. */
function sheetOf({ supply: { makerFuseA, terminalAreaM2 } }: SupplyBrief, amplifier: AmplifierOnSupply, index: number) {
  const { onboardFusesA } = amplifier
  return {
    ...present({
      onboardFusesA,
      makerFuseA: index > 0 || makerFuseA === undefined ? undefined : makerFuseA,
      terminalAreaM2: index > 0 || terminalAreaM2 === undefined ? undefined : terminalAreaM2
    })
  }
}

/**
 * What its fuse may have to break: of a second battery right beside the block all of it; of the first what the trunk leaves,
 * which the usual families mostly break; of a converter nothing much.
 */
function faultOf(brief: SupplyBrief, strong: boolean): Pick<CableChoiceRequest, 'source' | 'fuseTypes'> {
  const { second, starter, amplifierV, supply } = brief
  const { converter, source } = supply
  if (Object.keys(second).length > 0) return { source: second }
  if (strong) return { source: starter }
  const usualTypes = usualFuseTypes(voltageClass(amplifierV))
  return { fuseTypes: [...usualTypes], ...(converter === undefined ? present({ source }) : {}) }
}

function branchRequest(
  brief: SupplyBrief,
  amplifier: AmplifierOnSupply,
  index: number,
  sizing: SupplyCurrent['sizing'],
  dropLimitV: number,
  strong: boolean
): CableChoiceRequest {
  const { gaugeSystem, insulationMaterial } = brief.supply
  const path: ReturnPath = { kind: 'cable', lengthM: brief.branchReturnM }
  return {
    currentA: sizing.fullSineA,
    heavyCurrentA: sizing.heavyA,
    systemVoltageV: brief.amplifierV,
    positiveLengthM: brief.branchM,
    return: path,
    dropLimitV,
    ...brief.inTheBoot,
    ...sheetOf(brief, amplifier, index),
    ...faultOf(brief, strong),
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
  'parallel-runs',
  'no-cable-fits'
]

export function cautionsOf(part: Branched, name: string): readonly Caution[] {
  if (!part.done) return []
  return part.outcome.cautions
    .filter(({ code }) => ofTheBranch.includes(code))
    .map(({ at: _, ...caution }) => resaid(caution, say('of-branch', { name, message: caution.said.message })))
}

type Branched = Part<CableChoiceRequest, CableChoice>

/** With a fuse of the usual families, or, where the battery drives more than they break, of one that breaks it. */
function branchPart(
  { run }: SupplyBrief,
  task: (strong: boolean) => CableChoiceRequest,
  tooStrong: (fuse: ChosenFuse) => boolean
): Branched {
  const part = run(task(false), chooseCable)
  const fuse = part.done ? part.outcome.result.fuse : undefined
  return fuse !== undefined && tooStrong(fuse) ? run(task(true), chooseCable) : part
}

/**
 * @param trunk  what the first battery reaches the block over
 * @param dropLimitV  what the trunk leaves of the drop allowed [V]
 */
export function planBranches(
  brief: SupplyBrief,
  amplifiers: readonly AmplifierOnSupply[],
  current: SupplyCurrent,
  trunk: PowerRun | undefined,
  dropLimitV: number
): Branches {
  const { branchM: positiveLengthM, branchReturnM: returnLengthM, returnBy } = brief
  const names = namesOf(amplifiers)
  const planned = amplifiers.map((amplifier, index) => {
    const sizing = current.amplifiers[index]?.sizing ?? current.sizing
    const part = branchPart(
      brief,
      strong => branchRequest(brief, amplifier, index, sizing, dropLimitV, strong),
      fuse => trunk !== undefined && tooStrongAtBlock(brief, trunk, { fuse })
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
            positiveLengthM,
            returnBy,
            returnLengthM,
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
