/** Every system that could be put together from what is at hand, in an order that does not depend on how it was listed. */
import type { SearchRequest } from '../../contract/systems/design-search.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { MOST_WEIGHED, type PlannedKind, plannedKinds } from '../../contract/systems/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'
import { contradictions, withoutDraw } from '../request/plan-amplifier.ts'
import type { SearchAmplifier, SearchDriver } from './search-request.ts'

export interface Combination {
  readonly driver: SearchDriver
  readonly driverCount: number
  readonly amplifier: SearchAmplifier
  readonly price?: number
  /** What a plan takes, the enclosure still open. */
  readonly plan: PlanRequest
}

export const USUAL_COUNTS: readonly number[] = [1, 2]

const countsOf = ({ driverCounts }: SearchRequest) => [...new Set(driverCounts ?? USUAL_COUNTS)]
export const kindsOf = ({ kinds }: SearchRequest): readonly PlannedKind[] =>
  plannedKinds.filter(kind => kinds === undefined || kinds.includes(kind))

/** How many times a space makes a system cost: under a leaning seat eight heights are tried, blocks cut the floor. */
function costliness({ car }: SearchRequest): number {
  const { seatSlopeDeg, keepOuts = [] } = car.space
  return (seatSlopeDeg === undefined ? 1 : 3) * (keepOuts.length > 2 ? 2 : 1)
}

function requireBounded(request: SearchRequest): void {
  const { drivers, amplifiers } = request
  const value = drivers.length * countsOf(request).length * amplifiers.length * kindsOf(request).length
  const maximum = MOST_WEIGHED / costliness(request)
  if (value <= maximum) return
  const detail = say('refused.drivers-counts-amplifiers-kinds-of-box', {
    driverCount: drivers.length,
    counts: countsOf(request).length,
    amplifierCount: amplifiers.length,
    kinds: kindsOf(request).length,
    all: value,
    maximum,
    space: maximum < MOST_WEIGHED ? say('refused.space-of-this-shape') : []
  })
  throw new DesignError('out-of-range', { field: '', value, maximum, unit: '1', detail })
}

function requireNames(list: 'drivers' | 'amplifiers', names: readonly string[]): void {
  const again = names.findIndex((name, index) => names.indexOf(name) < index)
  if (again < 0) return
  const detail = say('refused.two-of-the-are-called-the', { list, name: names[again] ?? '' })
  throw new DesignError('conflicting-input', { field: `${list}[${again}].name`, detail })
}

/** Without rating and excursion of a driver nothing says how loud it may play. */
function requireRatings({ drivers }: SearchRequest): void {
  const faults = drivers.flatMap(({ sheet, name }, index) =>
    (['powerW', 'xmaxM'] as const)
      .filter(quantity => sheet[quantity] === undefined)
      .map(quantity => ({
        field: `drivers[${index}].sheet.${quantity}`,
        detail: say('refused.cannot-be-compared-without-its', {
          name,
          figure: quantity === 'powerW' ? say('refused.rms-rating') : say('refused.one-way-excursion')
        })
      }))
  )
  const [first, ...others] = faults
  if (first !== undefined) throw new DesignError('missing-input', first, ...others)
}

function planOf(request: SearchRequest, driver: SearchDriver, driverCount: number, amplifier: SearchAmplifier) {
  const { board, car, supply, signal = {}, finish, air, port } = request
  const { price: _, ...bought } = driver
  const plan: PlanRequest = {
    name: `${driverCount} × ${driver.name} on ${amplifier.name}`,
    driver: bought,
    driverCount,
    amplifier: withoutDraw(amplifier),
    ...(port === undefined
      ? {}
      : {
          enclosure: present({ portShape: port.shape, airSpeedMPerS: port.airSpeedMPerS })
        }),
    board,
    car,
    supply,
    signal,
    ...present({ finish, air })
  }
  return sixDigitsThroughout(plan)
}

/** One figure in two places that differ, and a port for boxes that have none. */
function requireUsable({ amplifiers, kinds, port }: SearchRequest): void {
  const detail = say('refused.a-closed-box-has-no-port')
  const [first, ...others] = [
    ...amplifiers.flatMap((amplifier, index) => contradictions(amplifier, `amplifiers[${index}].`)),
    ...(port !== undefined && kinds?.every(kind => kind === 'closed') ? [{ field: 'port', detail }] : [])
  ]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
}

const textOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
const byName = (a: { readonly name: string }, b: { readonly name: string }) => textOrder(a.name, b.name)

/**
 * @returns a group for each driver and count: its boxes are much alike whatever amplifier drives them
 * @throws DesignError `out-of-range` beyond MOST_WEIGHED, `conflicting-input` for a name given twice, `missing-input`
 * without the ratings of a driver
 */
export function combinations(request: SearchRequest): readonly (readonly Combination[])[] {
  const { drivers, amplifiers } = request
  requireBounded(request)
  requireNames(
    'drivers',
    drivers.map(({ name }) => name)
  )
  requireNames(
    'amplifiers',
    amplifiers.map(({ name }) => name)
  )
  requireRatings(request)
  requireUsable(request)
  const counts = countsOf(request).sort((a, b) => a - b)
  return [...drivers].sort(byName).flatMap(driver =>
    counts.map(driverCount =>
      [...amplifiers].sort(byName).map(amplifier => ({
        driver,
        driverCount,
        amplifier,
        ...priceOf(driver, driverCount, amplifier),
        plan: planOf(request, driver, driverCount, amplifier)
      }))
    )
  )
}

function priceOf(driver: SearchDriver, driverCount: number, amplifier: SearchAmplifier): { price?: number } {
  if (driver.price === undefined || amplifier.price === undefined) return {}
  return { price: driverCount * driver.price + amplifier.price }
}
