/** What the finished box does at the power the gain is set to, protected as the plan says. */
import type { PortRequest } from '../../contract/enclosures/enclosure.ts'
import type { PlanRequest } from '../../contract/systems/plan-request.ts'
import type { PlannedKind } from '../../contract/systems/words.ts'
import { computeResponse, type Response } from '../../domain/enclosure/answer/compute-response.ts'
import type { ResponseRequest } from '../../domain/enclosure/model/request.ts'
import { present } from '../../domain/present.ts'
import type { JoinedDrivers } from '../load/plan-load.ts'
import { type Part, runPart } from '../request/part.ts'
import { usual } from '../request/plan-usual.ts'
import { CROSSOVER_ORDER, crossoverHz } from './plan-crossover.ts'
import { acousticDriver, type DriverPart, joinedDrivers } from './plan-drivers.ts'

export type ResponsePart = Part<ResponseRequest, Response>

export interface BuiltEnclosure {
  readonly kind: PlannedKind
  readonly netVolumeM3: number
  readonly port?: PortRequest
  /** K of ends, walls and bends. */
  readonly portLossFactor?: number
  readonly leakQ?: number
}

/** The frequencies of a bass system, close enough for a smooth chart. */
export const SHOWN = { fromHz: 10, toHz: 200, points: 120 } as const

function responseRequest(
  request: PlanRequest,
  drivers: DriverPart & { readonly done: true },
  joined: JoinedDrivers,
  { kind, netVolumeM3, port, portLossFactor, leakQ }: BuiltEnclosure,
  frequenciesHz: NonNullable<ResponseRequest['frequenciesHz']>
): ResponseRequest {
  const { car, air } = request
  const airLimit = request.enclosure?.airSpeedMPerS
  return {
    driver: acousticDriver(drivers.outcome.result),
    drivers: joinedDrivers(request, joined),
    enclosure: {
      kind,
      rear: {
        netVolumeM3,
        ...present({ leakQ, port })
      }
    },
    source: { voltageV: joined.targetVoltageV, seriesOhm: joined.seriesOhm },
    filters: planFilters(request),
    limits: {
      amplifierVoltageV: joined.amplifierVoltageV,
      ratedOhm: joined.loadOhm,
      ...(airLimit === undefined || port === undefined ? {} : { airSpeedMPerS: airLimit }),
      ...present({ portLossFactor })
    },
    frequenciesHz,
    ...present({ cabin: car.cabin, air })
  }
}

/** Computed once to see what the cone needs, and again with the high-pass that gives it. */
export function planResponse(
  request: PlanRequest,
  drivers: DriverPart & { readonly done: true },
  joined: JoinedDrivers,
  built: BuiltEnclosure,
  frequenciesHz: NonNullable<ResponseRequest['frequenciesHz']> = SHOWN
): ResponsePart {
  const bare = responseRequest(request, drivers, joined, built, frequenciesHz)
  const corner = neededCornerHz({ ...bare, frequenciesHz: UNREAD_HZ })
  return runPart(corner === undefined ? bare : { ...bare, filters: planFilters(request, corner) }, computeResponse)
}

/** What a response is asked at whose curves nobody reads: limits and scalars are found on grids of their own. */
export const UNREAD_HZ = [40] as const

function neededCornerHz(request: ResponseRequest): number | undefined {
  const found = runPart(request, computeResponse)
  return found.done ? protectiveCornerHz(found.outcome.result, request) : undefined
}

/** Second order is what amplifiers have built in. */
const PROTECTIVE_ORDER = 2

/**
 * Rounded up to what a dial can be set to, so that the cone stays within its excursion; the one in the way already, if any. An air
 * spring holds the cone of a closed box at all frequencies: it needs none where the music itself does not pass Xmax.
 */
export function protectiveCornerHz({ limits }: Response, { enclosure, filters }: ResponseRequest): number | undefined {
  const set = filters?.find(filter => filter.kind === 'high-pass')
  if (set !== undefined && 'cornerHz' in set) return set.cornerHz
  const protection = limits?.protection
  if (limits === undefined || protection === undefined || !protection.needed) return undefined
  if (enclosure.kind === 'closed' && (limits.atDrive.coneExcursionOfXmax ?? 1) <= 1) return undefined
  const found = protection.highPass.find(({ order }) => order === PROTECTIVE_ORDER)
  return found === undefined ? undefined : Math.max(usual.lowestCornerHz.value, Math.ceil(found.cornerHz))
}

const lowPass = (request: PlanRequest) =>
  ({ kind: 'low-pass', family: 'butterworth', order: CROSSOVER_ORDER, cornerHz: crossoverHz(request) }) as const

const protectiveHighPass = (cornerHz: number) =>
  ({ kind: 'high-pass', family: 'butterworth', order: PROTECTIVE_ORDER, cornerHz }) as const

/** What the plan sets before the amplifier; port and response are computed with the same. */
export const planFilters = (request: PlanRequest, highPassHz?: number) => [
  lowPass(request),
  ...(highPassHz === undefined ? [] : [protectiveHighPass(highPassHz)])
]
