/** Where no box fits: the least changes of the request with which one does, each planned before it is offered. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { PlanWaysOut } from '../../contract/systems/plan-choice.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { present } from '../../domain/present.ts'
import { saidOf, say } from '../../domain/say.ts'
import type { RunPart } from '../request/part.ts'
import { fewer, frontwards, opened, uncovered, upwards } from './changes.ts'
import { largestDriver } from './largest-driver.ts'
import { roomier, sides } from './roomier.ts'
import { type Change, inOrder, wayOut } from './way-out.ts'

/** More room along one side, and along two where one side is not enough. */
function withRoom(from: Change): ReturnType<typeof wayOut> {
  const alone = sides.flatMap(side => roomier(from, [side]))
  return alone.length > 0 ? alone : roomier(from, ['heightM', 'depthM'])
}

/** @param request  as the caller gave it */
export function planWaysOut(request: PlanRequest, run: RunPart): PlanWaysOut {
  const asked: Change = { texts: [], request, patch: {}, run }
  const within = [...opened(asked), ...uncovered(asked), ...frontwards(asked), ...upwards(asked), ...fewer(asked)]
  const single = [...within.flatMap(wayOut), ...withRoom(asked)]
  const ways = single.length > 0 ? single : [...frontwards(asked), ...fewer(asked)].flatMap(withRoom)
  return { changes: inOrder(ways), ...present({ largestDriver: largestDriver(request) }) }
}

/** The sentence that says why nothing fits, with the change that costs the least. */
export function withWayOut(misfit: Said | undefined, waysOut: PlanWaysOut | undefined): Said | undefined {
  const [least] = waysOut?.changes ?? []
  return misfit === undefined || least === undefined
    ? misfit
    : say('answer.with-way-out', {
        misfit,
        change: say('way-out.change-and-box', { change: saidOf(least, 'change'), builds: saidOf(least, 'builds') })
      })
}
