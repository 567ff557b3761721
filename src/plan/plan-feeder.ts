/** The run as it will lie in the car: trunk, block and branches, the voltage that reaches each amplifier. */
import type { AmplifierOnSupply } from '../domain/supply/amplifier-draw.ts'
import type { CableChoiceRequest, ReturnPath } from '../domain/supply/cable-request.ts'
import { type CableChoice, chooseCable } from '../domain/supply/choose-cable.ts'
import { computeFeeder } from '../domain/supply/compute-feeder.ts'
import type { Feeder } from '../domain/supply/feeder-answer.ts'
import type { FeederAmplifier, FeederRequest, FeederStage } from '../domain/supply/feeder-request.ts'
import type { SupplyCurrent } from '../domain/supply/supply-current.ts'
import { attempt, type Part, waitingFor } from './part.ts'
import { conductorOf } from './plan-conductor.ts'
import type { PlanRequest } from './plan-request.ts'
import { RUNNING_OVER_NOMINAL, usual } from './plan-usual.ts'

export type FeederPart = Part<FeederRequest, Feeder>

const leadM = (path: ReturnPath) => (path.kind === 'chassis' ? (path.leadLengthM ?? usual.groundLeadM.value) : 0)

/** With a block the ground leads belong to the branches; the trunk returns through the body or its own cable. */
function trunkReturn(path: ReturnPath, shared: boolean): ReturnPath {
  return shared && path.kind === 'chassis' ? { ...path, leadLengthM: 0 } : path
}

function stage(
  request: PlanRequest,
  { cable, fuse }: CableChoice,
  positiveLengthM: number,
  path: ReturnPath
): FeederStage | undefined {
  if (cable === undefined) return undefined
  return {
    cable: { designation: cable.designation, positiveLengthM, return: path, ...conductorOf(request) },
    ...(fuse === undefined ? {} : { fuse: { ratingA: fuse.ratingA, type: fuse.type } })
  }
}

function branch(request: PlanRequest, currentA: number, heavyCurrentA: number): FeederStage | undefined {
  const { supply } = request
  const positiveLengthM = supply.branchLengthM ?? usual.branchM.value
  const path: ReturnPath = { kind: 'cable', lengthM: leadM(supply.return) || positiveLengthM }
  const { gaugeSystem } = supply
  const wish: CableChoiceRequest = {
    currentA,
    heavyCurrentA,
    systemVoltageV: supply.systemVoltageV,
    positiveLengthM,
    return: path,
    ...conductorOf(request),
    ...(gaugeSystem === undefined ? {} : { gaugeSystem })
  }
  const chosen = attempt(wish, chooseCable)
  return chosen.done ? stage(request, chosen.outcome.result, positiveLengthM, path) : undefined
}

export function planFeeder(
  request: PlanRequest,
  amplifiers: readonly AmplifierOnSupply[],
  current: SupplyCurrent,
  cable: Part<CableChoiceRequest, CableChoice>
): FeederPart {
  const { supply } = request
  const shared = amplifiers.length > 1
  const trunk = cable.done
    ? stage(request, cable.outcome.result, supply.positiveLengthM, trunkReturn(supply.return, shared))
    : undefined
  if (trunk === undefined) return waitingFor('a cable that passes')
  const fed = amplifiers.map((amplifier, index): FeederAmplifier => {
    const share = current.amplifiers[index]
    const own = shared && share !== undefined ? branch(request, share.fullSineA, share.heavyA) : undefined
    return { ...amplifier, ...(own === undefined ? {} : { branch: own }) }
  })
  const battery = supply.source
  return attempt(
    {
      systemVoltageV: supply.systemVoltageV,
      source: {
        voltageV: supply.systemVoltageV * RUNNING_OVER_NOMINAL,
        ...(battery === undefined ? {} : { battery })
      },
      trunk,
      amplifiers: fed
    },
    computeFeeder
  )
}
