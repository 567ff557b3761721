/** The circuit around a cable: its task, fuse, source and the resistances that are not cable. */

import type { CableChoiceRequest } from '../../../contract/supply/supply-cables.ts'
import type { FusePolicy } from '../../../contract/supply/words.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import { fixed } from '../../digits.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { type Breaking, batteryOhm, openCircuit, strongestSource } from '../fuse/battery-source.ts'
import { fuseHeating, ratingBounds, withMaker } from '../fuse/chosen-fuse.ts'
import { fuseDefaults } from '../fuse/defaults.ts'
import { type FuseLink, nextRating } from '../fuse/fuse-rating.ts'
import { supplyDefaults } from '../source/defaults.ts'
import type { Criteria } from './cable-candidate.ts'
import { type CableTask, cableTask } from './cable-request.ts'

/** Resolved beside the task; shared with the search for parallel runs. */
export interface Circuit {
  readonly task: CableTask
  readonly criteria: Criteria
  readonly lowestA: number
  /** Dense bass. */
  readonly heavyA: number
  readonly breaking: Breaking
  readonly jointsOhm: number
  readonly chassisOhm: number
  /** The part of the body that nobody stated. */
  readonly assumedOhm: number
}

const JOINTS = 4

interface RestOhms {
  readonly jointsOhm: number
  readonly chassisOhm: number
  /** The body where nobody stated it: no stop rests on it. */
  readonly assumedOhm: number
}

function restOhms(request: CableChoiceRequest, assumed: Assumptions): RestOhms {
  const { chassisOhm, jointOhm } = supplyDefaults
  const fourJoints = { ...jointOhm, why: `${jointOhm.why}; four of them` }
  const path = request.return
  const jointsOhm = JOINTS * assumed.take(request.jointOhm, 'jointOhm', fourJoints)
  if (path.kind === 'cable') return { jointsOhm, chassisOhm: 0, assumedOhm: 0 }
  const body = assumed.take(path.resistanceOhm, 'return.resistanceOhm', chassisOhm)
  return { jointsOhm, chassisOhm: body, assumedOhm: path.resistanceOhm === undefined ? body : 0 }
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
    ...present({ types: request.fuseTypes })
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
      detail: say('refused.a-a-fuse-opens-on-the', { fuseA, loadA: fixed(loadA, 1) })
    })
  }
  const link = nextRating({ ...ask, lowestA: fuseA }, 'fuseTypes')
  if (link?.ratingA === fuseA) return link
  throw new DesignError('unknown-designation', {
    field: 'fuseA',
    value: fuseA,
    detail: say('refused.a-is-no-standard-rating-a', {
      fuseA,
      next: link === undefined ? [] : say('refused.next-rating', { ratingA: link.ratingA })
    })
  })
}

/** Its default is told by the fuse, which looks at it unless the full sine lasts. */
function heavyCurrent(request: CableChoiceRequest, fullSineA: number, assumed: Assumptions): number {
  const { heavyShare } = fuseDefaults
  if (!request.continuousTone) return request.heavyCurrentA ?? fullSineA * heavyShare.value
  return assumed.work(request.heavyCurrentA, 'heavyCurrentA', fullSineA * heavyShare.value, heavyShare)
}

export function circuitOf(request: CableChoiceRequest, assumed: Assumptions): Circuit {
  const task = cableTask(request, assumed)
  const load = { ...request, currentA: task.currentA }
  const heating = fuseHeating(load, task.surroundings.ambientC, assumed)
  const { lowestA, loadA } = ratingBounds(task.currentA, heating)
  const sourceOhm = batteryOhm(request.source ?? {}, request.systemVoltageV, assumed, 'source.')
  const openCircuitV = openCircuit(request.source ?? {}, request.systemVoltageV, assumed, 'source.')
  const rest = restOhms(request, assumed)
  // its defaults are told with those of the weak end of the same battery
  const breaking = strongestSource(request.source ?? {}, request.systemVoltageV, 0, assumptions())
  const fuse = chooseLink(request, lowestA, loadA, breaking)
  return {
    task,
    lowestA,
    heavyA: heavyCurrent(request, task.currentA, assumed),
    breaking,
    ...rest,
    criteria: {
      policy: assumed.take<FusePolicy>(request.policy, 'policy', fuseDefaults.policy),
      systemVoltageV: request.systemVoltageV,
      openCircuitV,
      sourceOhm,
      restOhm: rest.jointsOhm + rest.chassisOhm,
      ...present({ fuse, terminalAreaM2: request.terminalAreaM2 })
    }
  }
}
