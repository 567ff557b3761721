/** The data sheet completed for the coil connection that the amplifier asks for. */
import { completeDriverParameters } from '../domain/driver/complete-driver-parameters.ts'
import type { DriverRequest } from '../domain/driver/driver.ts'
import type { DriverParameters, DriverParametersRequest } from '../domain/driver/driver-parameters.ts'
import type { DriversRequest } from '../domain/enclosure/request.ts'
import { attempt, type Part } from './part.ts'
import type { JoinedDrivers } from './plan-load.ts'
import type { PlanRequest } from './plan-request.ts'

export type DriverPart = Part<DriverParametersRequest, DriverParameters>

export function planDrivers({ driver, air }: PlanRequest, joined: JoinedDrivers | undefined): DriverPart {
  const { ratedOhm: _, ...coils } = driver.coils
  const request = {
    driver: driver.sheet,
    coils: { ...coils, ...(joined === undefined ? {} : { wanted: joined.connection }) },
    ...(air === undefined ? {} : { air })
  }
  return attempt(request, completeDriverParameters)
}

/** The set the acoustic parts compute with: one of the two redundant sets, so that no rounding contradicts the other. */
export function acousticDriver({ driver }: DriverParameters): DriverRequest {
  const { fsHz, qms, qes, vasM3, sdM2, reOhm, leH, leParallelOhm, xmaxM, powerW } = driver
  return {
    fsHz,
    qms,
    qes,
    vasM3,
    sdM2,
    reOhm,
    ...(leH === undefined ? {} : { leH }),
    ...(leParallelOhm === undefined ? {} : { leParallelOhm }),
    ...(xmaxM === undefined ? {} : { xmaxM }),
    ...(powerW === undefined ? {} : { powerW })
  }
}

export function joinedDrivers({ driverCount }: PlanRequest, joined: JoinedDrivers): DriversRequest {
  return { count: driverCount, inSeries: joined.driversInSeries }
}
