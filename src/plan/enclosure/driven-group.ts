/** The drivers of the plan as one group, and what may not be passed while they play: for the closed forms of the designer. */
import { airOf } from '../../domain/air/air.ts'
import { assumptions } from '../../domain/assume.ts'
import { type Driver, driverOf } from '../../domain/driver/driver.ts'
import { SWEPT_VOLUMES } from '../../domain/enclosure/model/air-spring.ts'
import { plateauPressurePa } from '../../domain/enclosure/model/plateau.ts'
import { present } from '../../domain/present.ts'
import type { DriveLimits } from '../designer/evaluate/box-response.ts'
import type { DriverWish } from '../designer/evaluate/driver-tables.ts'
import type { JoinedDrivers } from '../load/joined-drivers.ts'
import { enclosurePlanDefaults } from './defaults.ts'
import type { Setting } from './parts/setting.ts'

function limitsOf({ xmaxM, powerW }: Driver, count: number, joined: JoinedDrivers): DriveLimits {
  const heatW = powerW === undefined ? undefined : powerW * count
  const ratedV =
    heatW === undefined ? undefined : Math.sqrt((heatW * joined.loadOhm) / enclosurePlanDefaults.musicDuty.value)
  return {
    ...present({ coneM: xmaxM, heatW, ratedV }),
    duty: enclosurePlanDefaults.musicDuty.value,
    amplifierV: joined.amplifierVoltageV,
    springShare: enclosurePlanDefaults.springShare.value
  }
}

interface DrivenGroup {
  readonly wish: DriverWish
  readonly limits: DriveLimits
  /** Net volume of the smallest box worth a look. */
  readonly leastM3: number
}

export function drivenGroup({ brief, driver: sheet, drivers, joined }: Setting): DrivenGroup {
  const { count } = drivers
  const air = airOf(brief.air, assumptions())
  const driver = driverOf(sheet, air)
  const swept = SWEPT_VOLUMES * count * driver.sdM2 * (driver.xmaxM ?? 0)
  return {
    wish: { driver, count, inSeries: joined.driversInSeries, seriesOhm: joined.seriesOhm, air },
    limits: limitsOf(driver, count, joined),
    leastM3: Math.max(swept, enclosurePlanDefaults.leastM3.value * count)
  }
}

/** Pressure at 1 m far above the resonance, for one volt at an output [Pa]. */
export function plateauAtOneVolt({ driver, count, inSeries, seriesOhm, air }: DriverWish): number {
  const wiring = { faces: count, voltageV: 1 / inSeries, seriesOhm: (seriesOhm * count) / inSeries ** 2 }
  return plateauPressurePa({ ...driver, reOhm: driver.coil.reOhm }, { ...wiring, densityKgPerM3: air.densityKgPerM3 })
}
