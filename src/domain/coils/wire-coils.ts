/** The loads that equal coils can present when every coil gets the same power. */
import { assumptions } from '../assume.ts'
import type { Outcome } from '../outcome.ts'

export interface CoilWiringRequest {
  readonly driverCount: number
  readonly coilsPerDriver: number
  readonly coilOhm: number
  readonly totalPowerW?: number
}

export interface CoilWiring {
  readonly loads: readonly { readonly ohm: number; readonly coilPowerW?: number }[]
}

/**
 * Balanced networks of n equal coils.
 *
 *   Z = Zc·s/p   for every s·p = n
 *
 * @param request  driverCount and coilsPerDriver ≥ 1, coilOhm [Ω] > 0
 * @returns loads [Ω], ascending
 * @validity Equal coils, all driven, in phase.
 * @source derived: series and parallel connection of equal resistances
 * @check  2 drivers of 1 coil of 4 Ω → 2 Ω and 8 Ω
 */
export function wireCoils(request: CoilWiringRequest): Outcome<CoilWiring> {
  const { driverCount, coilsPerDriver, coilOhm, totalPowerW } = request
  const coils = driverCount * coilsPerDriver
  const inSeries = Array.from({ length: coils }, (_, index) => index + 1).filter(series => coils % series === 0)
  const loads = inSeries.map(series => ({
    ohm: (coilOhm * series * series) / coils,
    ...(totalPowerW === undefined ? {} : { coilPowerW: totalPowerW / coils })
  }))
  return { result: { loads }, cautions: [], assumed: assumptions().list, sources: [], basis: [] }
}
