/** What a solved feeder says, stretch by stretch and amplifier by amplifier. */
import type { AmplifierAnswer, Feeder, FeederRequest, StageAnswer } from '../../../contract/supply/supply-feeder.ts'
import { present } from '../../present.ts'
import { protectionOf } from './feeder-protection.ts'
import { partOhms, type StageTask, stageOhm, stageTemperature } from './feeder-stage.ts'
import { trunkState } from './shared-trunk.ts'
import { branchesAt, type FeederTask, type Solved } from './solve-feeder.ts'

function stageAnswer(stage: StageTask, conductorC: number, currentA: number | undefined): StageAnswer {
  const { cable, fuse } = stage
  const resistanceOhm = stageOhm(stage, conductorC)
  return {
    resistanceOhm,
    parts: partOhms(stage, conductorC),
    ...(currentA === undefined
      ? {}
      : { currentA, dropV: currentA * resistanceOhm, lossW: currentA ** 2 * resistanceOhm }),
    ...present({
      conductorC: cable && (currentA === undefined ? conductorC : stageTemperature(stage, currentA)),
      fuseRatingA: fuse?.ratingA,
      ampacityA: cable?.carries.ampacityA === undefined ? undefined : cable.carries.ampacityA * cable.runs
    })
  }
}

interface AtAmplifier {
  readonly voltageV: number
  readonly currentA: number
}

function amplifierAnswer(
  request: FeederRequest,
  feeder: FeederTask,
  solved: Solved,
  index: number,
  lowV: number | undefined
): AmplifierAnswer {
  const at: AtAmplifier | undefined = solved.answer.state?.loads[index]
  const dropOutV = feeder.dropOutsV[index] ?? 0
  const stage = feeder.branches[index]
  const amplifier = request.amplifiers[index]
  const dropV = lostV(feeder, solved, index)
  return {
    ...present({ name: amplifier?.name }),
    feasible: at !== undefined,
    ...(at === undefined
      ? {}
      : { ...at, inputPowerW: at.voltageV * at.currentA, dropV, dropPercent: (100 * dropV) / request.systemVoltageV }),
    ...present({ troughVoltageV: lowV }),
    firstGuessA: firstGuess(feeder, index, request.source.voltageV),
    dropOutV,
    runs: at !== undefined && at.voltageV >= dropOutV,
    ...(amplifier?.branch === undefined || stage === undefined
      ? {}
      : { branch: stageAnswer(stage, solved.branchesC[index] ?? 20, at?.currentA) })
  }
}

/** Over trunk and branch, by Ohm's law: exactly nothing where there is no resistance. */
function lostV({ trunk, branches }: FeederTask, { answer, trunkC, branchesC }: Solved, index: number): number {
  const branch = branches[index]
  const inBranch = (answer.state?.loads[index]?.currentA ?? 0) * (branch ? stageOhm(branch, branchesC[index] ?? 20) : 0)
  return (answer.state?.totalA ?? 0) * stageOhm(trunk, trunkC) + inBranch
}

function firstGuess(feeder: FeederTask, index: number, sourceV: number): number {
  const load = feeder.loads[index]?.load
  if (load === undefined) return 0
  if (load.kind === 'power') return load.amount / sourceV
  return load.kind === 'current' ? load.amount : sourceV / load.amount
}

/** Heat in trunk and branches [W]. */
function lossOf(trunk: StageAnswer, amplifiers: readonly AmplifierAnswer[]): number {
  return amplifiers.reduce((sum, { branch }) => sum + (branch?.lossW ?? 0), trunk.lossW ?? 0)
}

export function feederAnswer(
  request: FeederRequest,
  feeder: FeederTask,
  solved: Solved,
  noise: Feeder['groundNoise']
): Feeder {
  const { answer } = solved
  const { state, nodeV, collapseFactor: margin } = answer
  const trunkOhm = answer.behindOhm + stageOhm(feeder.trunk, solved.trunkC)
  const trough = trunkState(answer.behindV, trunkOhm, branchesAt(feeder, solved.branchesC), 2)
  const amplifiers = request.amplifiers.map((_, index) =>
    amplifierAnswer(request, feeder, solved, index, trough?.loads[index]?.voltageV)
  )
  const trunk = stageAnswer(feeder.trunk, solved.trunkC, state?.totalA)
  const powers = feeder.loads.map(({ load }) => (load.kind === 'power' ? load.amount : undefined))
  const askedW = powers.includes(undefined) ? undefined : powers.reduce<number>((sum, power) => sum + (power ?? 0), 0)
  return {
    feasible: state !== undefined,
    mode: answer.mode,
    sourceVoltageV: answer.behindV,
    ...present({ nodeVoltageV: nodeV }),
    ...(state === undefined ? {} : { blockVoltageV: state.blockV, totalCurrentA: state.totalA }),
    ...present({
      collapseMargin: margin,
      maximumPowerW: margin === undefined || askedW === undefined ? undefined : margin * askedW,
      lossW: state === undefined ? undefined : lossOf(trunk, amplifiers),
      trunk: request.trunk && trunk
    }),
    amplifiers,
    protection: protectionOf(feeder.trunk, feeder.branches),
    ...present({ groundNoise: noise })
  }
}
