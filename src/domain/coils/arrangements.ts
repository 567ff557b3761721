/** Networks a builder would make: the coils of each driver joined first, then the drivers. All coils take the same power. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { say } from '../say.ts'
import { type Coil, type CoilNetwork, joined } from './coil-network.ts'

export interface Arrangement {
  readonly coilsInDriver: 'single' | 'series' | 'parallel' | 'series-parallel'
  /** Coils in series inside each driver. */
  readonly coilsInSeries: number
  readonly driversInSeries: number
  readonly parallelStrings: number
}

export const divisors = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => index + 1).filter(divisor => count % divisor === 0)

function coilsInDriver(coilsPerDriver: number, inSeries: number): Arrangement['coilsInDriver'] {
  if (coilsPerDriver === 1) return 'single'
  if (inSeries === coilsPerDriver) return 'series'
  return inSeries === 1 ? 'parallel' : 'series-parallel'
}

/** Every arrangement; several may present the same load. */
export function arrangementsOf(driverCount: number, coilsPerDriver: number): readonly Arrangement[] {
  return divisors(coilsPerDriver).flatMap(coilsInSeries =>
    divisors(driverCount).map(driversInSeries => ({
      coilsInDriver: coilsInDriver(coilsPerDriver, coilsInSeries),
      coilsInSeries,
      driversInSeries,
      parallelStrings: driverCount / driversInSeries
    }))
  )
}

/**
 * The arrangement with a given number of coils between the amplifier's terminals. Among several, the one with the fewest
 * drivers in series: each driver then sits closest to the amplifier's low output resistance, and a broken coil silences least.
 * There always is one: with g = gcd(s, c), s/g divides the number of drivers whenever s divides the number of coils.
 *
 * @param inSeries  s, a divisor of driverCount·coilsPerDriver
 */
export function arrangementWith(inSeries: number, driverCount: number, coilsPerDriver: number): Arrangement {
  const coilsInSeries = Math.max(...divisors(coilsPerDriver).filter(divisor => inSeries % divisor === 0))
  const driversInSeries = inSeries / coilsInSeries
  return {
    coilsInDriver: coilsInDriver(coilsPerDriver, coilsInSeries),
    coilsInSeries,
    driversInSeries,
    parallelStrings: driverCount / driversInSeries
  }
}

const grid = <Leaf>(cells: readonly CoilNetwork<Leaf>[], inSeries: number): CoilNetwork<Leaf> =>
  joined(
    'parallel',
    Array.from({ length: cells.length / inSeries }, (_, string) =>
      joined('series', cells.slice(string * inSeries, (string + 1) * inSeries))
    )
  )

export function networkOf(arrangement: Arrangement, driverCount: number, coilsPerDriver: number): CoilNetwork<Coil> {
  const drivers = Array.from({ length: driverCount }, (_, driver) =>
    grid<Coil>(
      Array.from({ length: coilsPerDriver }, (_, coil) => ({
        join: 'coil',
        leaf: { driver: driver + 1, coil: coil + 1 }
      })),
      arrangement.coilsInSeries
    )
  )
  return grid(drivers, arrangement.driversInSeries)
}

function driversSaid({ driversInSeries, parallelStrings }: Arrangement, driverCount: number): readonly Said[] {
  if (driverCount === 1) return []
  if (parallelStrings === 1) return [say('coils.drivers-series', { driverCount })]
  if (driversInSeries === 1) return [say('coils.drivers-parallel', { driverCount })]
  return [say('coils.strings', { stringCount: parallelStrings, driverCount: driversInSeries })]
}

/** The arrangement in words. */
export function joinSaid(arrangement: Arrangement, driverCount: number): Said {
  const { coilsInDriver: own } = arrangement
  const [first, rest] = [
    ...(own === 'single' ? [] : [say(`coils.own-${own}`)]),
    ...driversSaid(arrangement, driverCount)
  ]
  if (first === undefined) return say('coils.straight')
  return rest === undefined ? first : say('coils.then', { first, rest })
}
