/** The metal and the surroundings that every cable of a plan shares. */
import type { CableChoiceRequest } from '../../contract/supply/supply-cables.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { SurroundingsRequest } from '../../domain/circuit/fuse/protected-cable.ts'
import { present } from '../../domain/present.ts'

export function conductorOf({ supply }: PlanRequest): SurroundingsRequest & Pick<CableChoiceRequest, 'conductor'> {
  const { conductor, insulationC, ambientC, spaces, bundledConductors } = supply
  return present({ conductor, insulationC, ambientC, spaces, bundledConductors })
}
