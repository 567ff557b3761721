/** The circuit around a cable: its task, fuse, source and the resistances that are not cable. */
import { type Assumptions, assumptions } from '../assume.ts'
import { DesignError } from '../design-error.ts'
import { type Breaking, batteryOhm, openCircuit, strongestSource } from '../fuse/battery-source.ts'
import { ratingBounds, withMaker } from '../fuse/chosen-fuse.ts'
import { fuseJudgement } from '../fuse/fuse-judgement.ts'
import { type FuseLink, nextRating } from '../fuse/fuse-rating.ts'
import type { FusePolicy } from '../fuse/protected-cable.ts'
import type { Yardstick } from './cable-candidate.ts'
import { type CableChoiceRequest, type CableTask, cableTask } from './cable-request.ts'
import { supplyJudgement } from './supply-judgement.ts'

/** Settled beside the task; shared with the search for parallel runs. */
export interface Circuit {
  readonly task: CableTask
  readonly yard: Yardstick
  readonly lowestA: number
  readonly breaking: Breaking
  readonly jointsOhm: number
  readonly chassisOhm: number
}

const JOINTS = 4

function restOhms(
  request: CableChoiceRequest,
  assumed: Assumptions
): { readonly jointsOhm: number; readonly chassisOhm: number } {
  const { jointOhm, chassisOhm } = supplyJudgement
  const path = request.return
  return {
    jointsOhm: JOINTS * assumed.or(request.jointOhm, 'jointOhm', jointOhm.value, `${jointOhm.why}; four of them`),
    chassisOhm:
      path.kind === 'cable'
        ? 0
        : assumed.or(path.resistanceOhm, 'return.resistanceOhm', chassisOhm.value, chassisOhm.why)
  }
}

function chooseLink(
  request: CableChoiceRequest,
  lowestA: number,
  loadA: number,
  breaking: Breaking
): FuseLink | undefined {
  const ask = {
    systemVoltageV: request.systemVoltageV,
    breaking,
    ...(request.fuseTypes === undefined ? {} : { types: request.fuseTypes })
  }
  const { fuseA } = request
  if (fuseA === undefined) {
    const ruled = nextRating({ ...ask, lowestA }, 'fuseTypes')
    return ruled === undefined ? undefined : withMaker(ruled, request.makerFuseA, loadA)
  }
  if (fuseA < loadA * (1 - 1e-12) && (request.checks ?? ['fuse']).includes('fuse')) {
    throw new DesignError('conflicting-input', {
      field: 'fuseA',
      value: fuseA,
      minimum: loadA,
      unit: 'A',
      detail: `A ${fuseA} A fuse opens on the ${loadA.toFixed(1)} A the load draws.`
    })
  }
  const link = nextRating({ ...ask, lowestA: fuseA }, 'fuseTypes')
  if (link?.ratingA === fuseA) return link
  throw new DesignError('unknown-designation', {
    field: 'fuseA',
    value: fuseA,
    detail: `${fuseA} A is no standard rating${link === undefined ? '' : `; the next is ${link.ratingA} A`}.`
  })
}

export function circuitOf(request: CableChoiceRequest, assumed: Assumptions): Circuit {
  const task = cableTask(request, assumed)
  const { lowestA, loadA } = ratingBounds({ ...request, currentA: task.currentA }, task.surroundings.ambientC, assumed)
  const sourceOhm = batteryOhm(request.source ?? {}, request.systemVoltageV, assumed, 'source.')
  const openCircuitV = openCircuit(request.source ?? {}, request.systemVoltageV, assumed, 'source.')
  const rest = restOhms(request, assumed)
  // its defaults are told with those of the weak end of the same battery
  const breaking = strongestSource(request.source ?? {}, request.systemVoltageV, 0, assumptions())
  const fuse = chooseLink(request, lowestA, loadA, breaking)
  return {
    task,
    lowestA,
    breaking,
    ...rest,
    yard: {
      policy: assumed.or<FusePolicy>(
        request.policy,
        'policy',
        fuseJudgement.policy,
        'rating at most the ampacity of the cable'
      ),
      systemVoltageV: request.systemVoltageV,
      openCircuitV,
      sourceOhm,
      restOhm: rest.jointsOhm + rest.chassisOhm,
      ...(fuse === undefined ? {} : { fuse }),
      ...(request.terminalAreaM2 === undefined ? {} : { terminalAreaM2: request.terminalAreaM2 })
    }
  }
}
