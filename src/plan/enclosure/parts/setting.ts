/** What every box of a plan is tried for: the drivers as they are wired, and what is asked of the box. */
import type { DriverRequest } from '../../../contract/drivers/driver.ts'
import type { DriversRequest } from '../../../contract/enclosures/enclosure.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import type { BoxBrief } from '../../request/box-brief.ts'
import { acousticDriver, type DriverPart } from './plan-drivers.ts'

export interface Setting {
  readonly brief: BoxBrief
  readonly driver: DriverRequest
  readonly drivers: Required<Pick<DriversRequest, 'count' | 'inSeries'>>
  readonly joined: JoinedDrivers
}

export function settingOf(
  brief: BoxBrief,
  driver: DriverPart & { readonly done: true },
  joined: JoinedDrivers
): Setting {
  return {
    brief,
    driver: acousticDriver(driver.outcome.result),
    drivers: { count: brief.drivers.count, inSeries: joined.driversInSeries },
    joined
  }
}
