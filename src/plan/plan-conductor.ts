/** The metal and the surroundings that every cable of a plan shares. */
import type { SurroundingsRequest } from '../domain/fuse/protected-cable.ts'
import type { CableChoiceRequest } from '../domain/supply/cable-request.ts'
import type { PlanRequest } from './plan-request.ts'

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
