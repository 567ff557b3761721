/** How the drivers of an enclosure are joined, electrically and in isobaric pairs. */
import type { DriversRequest } from '../../../contract/enclosures/enclosure.ts'
import type { Assumptions } from '../../assume.ts'
import { DesignError } from '../../design-error.ts'
import type { Driver } from '../../driver/driver.ts'
import type { Connection } from '../../network/network.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { enclosureDefaults } from './defaults.ts'

export interface DriverWiring {
  readonly count: number
  /** Drivers that share one current from terminal to terminal. */
  readonly inSeries: number
  /** Drivers whose front is seen from the front. */
  readonly faces: number
  /** Drivers in series within one group. */
  readonly groupInSeries: number
  /** Resistance of all drivers at rest [Ω]. */
  readonly groupOhm: number
  /** Air volume as compliant as all suspensions seen from one side. */
  readonly vasM3: number
  readonly isobaric?: { readonly couplingVolumeM3: number; readonly connection: Connection }
}

function isobaricOf(request: DriversRequest | undefined, count: number, assume: Assumptions) {
  const pairs = request?.isobaric
  if (pairs === undefined) return undefined
  if (count % 2 !== 0) {
    throw new DesignError('conflicting-input', {
      field: 'drivers.count',
      value: count,
      detail: say('refused.isobaric-drivers-come-in-pairs-every')
    })
  }
  const connection = assume.take(pairs.connection, 'drivers.isobaric.connection', enclosureDefaults.isobaricConnection)
  return { couplingVolumeM3: pairs.couplingVolumeM3, connection }
}

/**
 * N drivers; of isobaric pairs N/2 faces are seen, each with twice the mass and half the compliance.
 *
 * @throws DesignError `conflicting-input` where strings or pairs do not come out even
 * @source derived: equal drivers move alike; an isobaric pair with a vanishing coupling volume moves as one cone
 * @check  a pair: half the Vas of one driver, coils in parallel Re/2
 */
export function driverWiring(request: DriversRequest | undefined, driver: Driver, assume: Assumptions): DriverWiring {
  const isobaric = request?.isobaric !== undefined
  const usual = isobaric ? enclosureDefaults.isobaricDrivers : enclosureDefaults.drivers
  const count = assume.take<number>(request?.count, 'drivers.count', usual)
  const strings = assume.take(request?.inSeries, 'drivers.inSeries', enclosureDefaults.inSeries)
  const pairs = isobaricOf(request, count, assume)
  const faces = pairs === undefined ? count : count / 2
  if (faces % strings !== 0) {
    throw new DesignError('conflicting-input', {
      field: 'drivers.inSeries',
      value: strings,
      detail: say('refused.drivers-cannot-be-split-into-strings', {
        driverCount: faces,
        each: pairs === undefined ? [] : say('refused.on-each-side'),
        stringCount: strings
      })
    })
  }
  const inSeries = pairs?.connection === 'series' ? 2 * strings : strings
  return {
    count,
    inSeries,
    faces,
    groupInSeries: strings,
    groupOhm: (driver.coil.reOhm * inSeries ** 2) / count,
    vasM3: driver.vasM3 * (pairs === undefined ? count : count / 4),
    ...present({ isobaric: pairs })
  }
}
