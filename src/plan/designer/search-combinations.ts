/** Every system that could be put together from what is at hand, in an order that does not depend on how it was listed. */
import type { SearchRequest } from '../../contract/systems/design-search.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import { type DesignGoal, MOST_WEIGHED, type SearchedKind, searchedKinds } from '../../contract/systems/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { sixDigitsThroughout } from '../../numeric/six-digits.ts'
import { contradictions, withoutDraw } from '../request/plan-amplifier.ts'
import { rankDefaults } from './defaults.ts'
import type { SearchAmplifier, SearchDriver } from './search-request.ts'

export interface Combination {
  readonly driver: SearchDriver
  readonly driverCount: number
  readonly amplifier: SearchAmplifier
  readonly price?: number
  /** What a plan takes, the enclosure still open. */
  readonly plan: PlanRequest
}

const countsOf = ({ driverCounts }: SearchRequest) => [...new Set(driverCounts ?? rankDefaults.driverCounts.value)]
/** Boxes with passive radiators only where some are at hand. */
export const kindsOf = ({
  kinds,
  passiveRadiators
}: Pick<SearchRequest, 'kinds'> & { readonly passiveRadiators?: object }): readonly SearchedKind[] =>
  searchedKinds.filter(kind => kinds?.includes(kind) ?? (kind !== 'passive-radiator' || passiveRadiators !== undefined))

function requireBounded(request: SearchRequest): void {
  const { drivers, amplifiers } = request
  const value = drivers.length * countsOf(request).length * amplifiers.length * kindsOf(request).length
  if (value <= MOST_WEIGHED) return
  const detail = say('refused.drivers-counts-amplifiers-kinds-of-box', {
    driverCount: drivers.length,
    counts: countsOf(request).length,
    amplifierCount: amplifiers.length,
    kinds: kindsOf(request).length,
    all: value,
    maximum: MOST_WEIGHED
  })
  throw new DesignError('out-of-range', { field: '', value, maximum: MOST_WEIGHED, unit: '1', detail })
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

interface Wanted {
  readonly driver: SearchDriver
  readonly driverCount: number
  readonly amplifier: SearchAmplifier
  readonly goal: DesignGoal
}

function planOf(request: SearchRequest, { driver, driverCount, amplifier, goal }: Wanted): PlanRequest {
  const { board, car, supply, signal = {}, finish, air, port, passiveRadiators } = request
  const { price: _, ...bought } = driver
  const plan: PlanRequest = {
    name: `${driverCount} × ${driver.name} on ${amplifier.name}`,
    driver: bought,
    driverCount,
    amplifier: withoutDraw(amplifier),
    enclosure: { goal, ...present({ portShape: port?.shape, airSpeedMPerS: port?.airSpeedMPerS }) },
    board,
    car,
    supply,
    signal,
    ...present({ finish, air, passiveRadiators })
  }
  return sixDigitsThroughout(plan)
}

/** One figure in two places that differ, and a port for boxes that have none. */
function requireUsable({ amplifiers, kinds, port, passiveRadiators }: SearchRequest): void {
  const detail = say('refused.a-closed-box-has-no-port')
  const [first, ...others] = [
    ...amplifiers.flatMap((amplifier, index) => contradictions(amplifier, `amplifiers[${index}].`)),
    ...(port !== undefined && kinds !== undefined && !kinds.includes('vented') ? [{ field: 'port', detail }] : []),
    ...(passiveRadiators !== undefined && kinds !== undefined && !kinds.includes('passive-radiator')
      ? [{ field: 'passiveRadiators', detail: say('refused.no-box-for-the-radiators') }]
      : [])
  ]
  if (first !== undefined) throw new DesignError('conflicting-input', first, ...others)
  if (passiveRadiators === undefined && kinds?.includes('passive-radiator')) {
    const needed = say('refused.a-box-with-radiators-needs-theirs', { region: '' })
    throw new DesignError('missing-input', { field: 'passiveRadiators', detail: needed })
  }
}

const textOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
const byName = (a: { readonly name: string }, b: { readonly name: string }) => textOrder(a.name, b.name)

/**
 * @throws DesignError `out-of-range` beyond MOST_WEIGHED, `conflicting-input` for a name given twice, `missing-input`
 * without the ratings of a driver
 */
export function requireSearchable(request: SearchRequest): void {
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
}

interface Shard {
  readonly index: number
  readonly of: number
}

/** Drivers are dealt out by name, so that parts are alike in size and the order of the list never shows. */
export function driversOf({ drivers }: SearchRequest, { index, of }: Shard): readonly SearchDriver[] {
  return [...drivers].sort(byName).filter((_, place) => place % of === index)
}

/** Every count and amplifier for one driver, made one after the other: a request and its parts are many. */
export function* combinationsOf(
  request: SearchRequest,
  driver: SearchDriver,
  goal: DesignGoal
): Generator<Combination> {
  const amplifiers = [...request.amplifiers].sort(byName)
  for (const driverCount of countsOf(request).sort((a, b) => a - b)) {
    for (const amplifier of amplifiers) yield combination(request, { driver, driverCount, amplifier, goal })
  }
}

export function combination(request: SearchRequest, wanted: Wanted): Combination {
  const { driver, driverCount, amplifier } = wanted
  const price =
    driver.price === undefined || amplifier.price === undefined
      ? undefined
      : driverCount * driver.price + amplifier.price
  return { driver, driverCount, amplifier, ...present({ price }), plan: planOf(request, wanted) }
}
