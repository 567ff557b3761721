/** The data sheet completed for the coil connection that the amplifier asks for. */
import type { DriverRequest } from '../../../contract/drivers/driver.ts'
import type {
  DriverParameters,
  DriverParametersRequest,
  DriverSheet
} from '../../../contract/drivers/driver-parameters.ts'
import type { PlanRequest } from '../../../contract/systems/plan-request.ts'
import { coilFactors } from '../../../domain/driver/coil-connection.ts'
import { completeDriverParameters } from '../../../domain/driver/complete-driver-parameters.ts'
import { present } from '../../../domain/present.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import type { Part } from '../../request/part.ts'
import type { ResolvedPlan } from '../../request/resolved-plan.ts'

export type DriverPart = Part<DriverParametersRequest, DriverParameters>

export function planDrivers({ driver, air, run }: ResolvedPlan, joined: JoinedDrivers | undefined): DriverPart {
  const { ratedOhm: _, ...coils } = driver.coils
  const request = {
    driver: ratedSheet(driver),
    coils: { ...coils, ...present({ wanted: joined?.connection }) },
    ...present({ air })
  }
  return run(request, completeDriverParameters)
}

/** A sheet without Re falls back on the rating of the coils, which a plan always knows. */
function ratedSheet({ sheet, coils: { count, ratedOhm, statedFor } }: PlanRequest['driver']): DriverSheet {
  if (sheet.reOhm !== undefined || sheet.ratedImpedanceOhm !== undefined) return sheet
  const joined = statedFor ?? (count === 1 ? 'one-coil' : 'series')
  if (joined === 'series-parallel' && count !== 4) return sheet
  return { ...sheet, ratedImpedanceOhm: ratedOhm * coilFactors(count, joined, 'coils.statedFor').resistance }
}

/** The set the acoustic parts compute with: one of the two redundant sets, so that no rounding contradicts the other. */
export function acousticDriver({ driver }: DriverParameters): DriverRequest {
  const { blTm: _bl, mmsKg: _mms, cmsMPerN: _cms, rmsKgPerS: _rms, qts: _qts, ...acoustic } = driver
  return acoustic
}
