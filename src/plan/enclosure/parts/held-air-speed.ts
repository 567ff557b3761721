/** One speed of the air in a port for the search of a box, for the levels of its response and for what is compared. */

import type { PlanEnclosure } from '../../request/plan-request.ts'
import { usual } from '../../request/plan-usual.ts'

/** Peak air speed up to which levels are held [m/s]. */
export const heldAirSpeed = ({ enclosure = {} }: { readonly enclosure?: PlanEnclosure }): number =>
  enclosure.airSpeedMPerS ?? usual.airSpeedMPerS.value
