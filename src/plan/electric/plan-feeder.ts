/** The run as it will lie in the car: trunk, block and branches, the voltage that reaches each amplifier at two levels. */
import type { AmplifierOnSupply, SupplyCurrent } from '../../contract/supply/supply-current.ts'
import type {
  Feeder,
  FeederAmplifier,
  FeederRequest,
  FeederSource,
  FeederStage
} from '../../contract/supply/supply-feeder.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { ReturnPath } from '../../domain/circuit/choice/cable-request.ts'
import { computeFeeder } from '../../domain/circuit/graph/compute-feeder.ts'
import { present } from '../../domain/present.ts'
import { type Part, runPart, waitingFor } from '../request/part.ts'
import { RUNNING_OVER_NOMINAL } from '../request/plan-usual.ts'
import { type Branches, branchCable } from './plan-branches.ts'
import { conductorOf } from './plan-conductor.ts'
import type { PowerRun } from './plan-run.ts'

export type FeederPart = Part<FeederRequest, Feeder>

/** With a block the ground leads belong to the branches; the trunk returns through the body or its own cable. */
export function trunkReturn(path: ReturnPath, shared: boolean): ReturnPath {
  return shared && path.kind === 'chassis' ? { ...path, leadLengthM: 0 } : path
}

/** The battery as a source, from what is said of it in either place. */
function batteryOf({ source, battery }: PlanRequest['supply']): FeederSource['battery'] {
  if (source !== undefined || battery === undefined) return source
  const { resistanceOhm, coldCrankingA } = battery
  if (resistanceOhm === undefined && coldCrankingA === undefined) return undefined
  return present({ resistanceOhm, coldCrankingA })
}

/** The plan's own alternator or converter, driving and hot, with the battery behind it; stiff where none is described. */
function sourceOf({ supply }: PlanRequest, { charging }: SupplyCurrent): FeederSource {
  const battery = batteryOf(supply)
  return {
    voltageV: supply.systemVoltageV * RUNNING_OVER_NOMINAL,
    ...(charging === undefined ? {} : { currentLimitA: charging.cruiseAvailableA, baseLoadA: charging.baseLoadA }),
    ...present({ battery })
  }
}

const fused = ({ fuse }: PowerRun): Pick<FeederStage, 'fuse'> =>
  fuse === undefined ? {} : { fuse: { ratingA: fuse.ratingA, type: fuse.type } }

function trunkStage(request: PlanRequest, trunk: PowerRun, shared: boolean): FeederStage {
  const { designation, runs, positiveLengthM } = trunk
  return {
    cable: {
      designation,
      positiveLengthM,
      ...(runs === 1 ? {} : { runs }),
      return: trunkReturn(request.supply.return, shared),
      ...conductorOf(request)
    },
    ...fused(trunk)
  }
}

/** Both levels of one run: the test tone that fuse and gain are set by, and dense bass, the loudest that music asks for. */
export function planFeeders(
  request: PlanRequest,
  amplifiers: readonly AmplifierOnSupply[],
  current: SupplyCurrent,
  trunk: PowerRun | undefined,
  { runs, missing }: Branches
): { readonly feeder: FeederPart; readonly feederHeavy: FeederPart } {
  const wanting =
    trunk === undefined
      ? 'a cable that passes'
      : missing === undefined
        ? undefined
        : `a branch cable to ${missing} that passes`
  if (trunk === undefined || wanting !== undefined) {
    const part = waitingFor(wanting ?? 'a cable that passes')
    return { feeder: part, feederHeavy: part }
  }
  const fed = amplifiers.map((amplifier, index): FeederAmplifier => {
    const run = runs[index]
    return run === undefined ? amplifier : { ...amplifier, branch: { cable: branchCable(request, run), ...fused(run) } }
  })
  const asked = {
    systemVoltageV: request.supply.systemVoltageV,
    source: sourceOf(request, current),
    trunk: trunkStage(request, trunk, amplifiers.length > 1),
    amplifiers: fed
  }
  return {
    feeder: runPart({ ...asked, level: 'full-sine' as const }, computeFeeder),
    feederHeavy: runPart({ ...asked, level: 'heavy' as const }, computeFeeder)
  }
}
