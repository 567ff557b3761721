/** The metal and the surroundings that every cable of a plan shares. */
import type { CableChoiceRequest } from '../../domain/circuit/choice/cable-request.ts'
import type { SurroundingsRequest } from '../../domain/circuit/fuse/protected-cable.ts'
import type { PlanRequest } from '../request/plan-request.ts'

export function conductorOf({ supply }: PlanRequest): SurroundingsRequest & Pick<CableChoiceRequest, 'conductor'> {
  const { conductor, insulationC, ambientC, spaces, bundledConductors } = supply
  return {
    ...(conductor === undefined ? {} : { conductor }),
    ...(insulationC === undefined ? {} : { insulationC }),
    ...(ambientC === undefined ? {} : { ambientC }),
    ...(spaces === undefined ? {} : { spaces }),
    ...(bundledConductors === undefined ? {} : { bundledConductors })
  }
}
