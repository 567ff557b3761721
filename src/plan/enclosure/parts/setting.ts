/** What every box of a plan is tried for. */
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import type { DriverPart } from './plan-drivers.ts'

export interface Setting {
  readonly request: PlanRequest
  readonly drivers: DriverPart & { readonly done: true }
  readonly joined: JoinedDrivers
}
