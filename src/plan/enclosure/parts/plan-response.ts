/** What the finished box does at the power the gain is set to, protected as the plan says. */
import type { PortRequest } from '../../../contract/enclosures/enclosure.ts'
import type { Response } from '../../../contract/enclosures/response.ts'
import type { PlannedKind } from '../../../contract/systems/words.ts'
import { computeResponse } from '../../../domain/enclosure/answer/compute-response.ts'
import { type ConeNeeds, coneNeeds, highestChamberPressurePa } from '../../../domain/enclosure/answer/trial-answers.ts'
import type { ResponseRequest } from '../../../domain/enclosure/model/request.ts'
import { present } from '../../../domain/present.ts'
import type { BoxBrief } from '../../request/box-brief.ts'
import { planDefaults } from '../../request/defaults.ts'
import type { Part } from '../../request/part.ts'
import { boxPlanDefaults } from './defaults.ts'
import { acousticRadiators, radiatorTravelM, type WeightedRadiators } from './plan-radiators.ts'
import type { Setting } from './setting.ts'

export type ResponsePart = Part<ResponseRequest, Response>

export interface BuiltEnclosure {
  readonly kind: PlannedKind
  readonly netVolumeM3: number
  /** Only of a band-pass: before the drivers. */
  readonly frontVolumeM3?: number
  readonly port?: PortRequest
  readonly radiators?: WeightedRadiators
  /** K of ends, walls and bends. */
  readonly portLossFactor?: number
  readonly leakQ?: number
}

function responseRequest(
  { brief, driver, drivers, joined }: Setting,
  { kind, netVolumeM3, frontVolumeM3, port, portLossFactor, leakQ, radiators }: BuiltEnclosure,
  frequenciesHz: NonNullable<ResponseRequest['frequenciesHz']>
): ResponseRequest {
  const { cabin, air, airSpeedMPerS } = brief
  const rear = { netVolumeM3, ...present({ leakQ }) }
  const opening = present({ port, passiveRadiators: radiators && acousticRadiators(radiators) })
  return {
    driver,
    drivers,
    enclosure:
      frontVolumeM3 === undefined
        ? { kind, rear: { ...rear, ...opening } }
        : { kind, rear, front: { netVolumeM3: frontVolumeM3, ...present({ leakQ }), ...opening } },
    source: { voltageV: joined.targetVoltageV, seriesOhm: joined.seriesOhm },
    filters: planFilters(brief),
    limits: {
      amplifierVoltageV: joined.amplifierVoltageV,
      ratedOhm: joined.loadOhm,
      ...present({
        airSpeedMPerS: port === undefined ? undefined : airSpeedMPerS,
        portLossFactor,
        passiveRadiatorXmaxM: radiators && radiatorTravelM(radiators)
      })
    },
    frequenciesHz,
    ...present({ cabin, air })
  }
}

/** With the high-pass that the cone needs. */
export function planResponse(
  setting: Setting,
  built: BuiltEnclosure,
  frequenciesHz: NonNullable<ResponseRequest['frequenciesHz']> = boxPlanDefaults.chart.value
): ResponsePart {
  const bare = responseRequest(setting, built, frequenciesHz)
  const { brief } = setting
  return brief.run(withProtection(brief, bare, neededCornerHz(brief, bare)), computeResponse)
}

const withProtection = (brief: BoxBrief, bare: ResponseRequest, cornerHz: number | undefined) =>
  cornerHz === undefined ? bare : { ...bare, filters: planFilters(brief, cornerHz) }

/** Where only limits are read: they are found on grids of their own. */
const UNREAD_HZ = [40] as const

const needsOf = ({ run }: BoxBrief, request: ResponseRequest) =>
  run({ ...request, frequenciesHz: UNREAD_HZ }, coneNeeds)

function neededCornerHz(brief: BoxBrief, request: ResponseRequest): number | undefined {
  const found = needsOf(brief, request)
  return found.done ? protectiveCornerHz(found.outcome.result, request) : undefined
}

/** The high-pass that the cone needs in a box like this. */
export function protectionFor(setting: Setting, built: BuiltEnclosure): number | undefined {
  return neededCornerHz(setting.brief, responseRequest(setting, built, UNREAD_HZ))
}

/** The highest pressure in such a box over the band of a chart, protected as the plan says; none where there is no response. */
export function pressureIn(setting: Setting, built: BuiltEnclosure): number | undefined {
  const bare = responseRequest(setting, built, boxPlanDefaults.chart.value)
  const needs = needsOf(setting.brief, bare)
  if (!needs.done) return undefined
  const { limits: _, ...linear } = withProtection(setting.brief, bare, protectiveCornerHz(needs.outcome.result, bare))
  const pressure = setting.brief.run(linear, highestChamberPressurePa)
  return pressure.done ? pressure.outcome.result : undefined
}

/**
 * Rounded up to what a dial can be set to, so that the cone stays within its excursion; the one in the way already, if any. An air
 * spring holds the cone of a closed box at all frequencies: it needs none where the music itself does not pass Xmax.
 */
export function protectiveCornerHz(
  { limits, radiatorCornerHz: radiatorHz = 0 }: Partial<ConeNeeds>,
  { enclosure, filters }: ResponseRequest
): number | undefined {
  const set = filters?.find(filter => filter.kind === 'high-pass')
  if (set !== undefined && 'cornerHz' in set) return set.cornerHz
  const isHeld = enclosure.kind === 'closed' && (limits?.atDrive.coneExcursionOfXmax ?? 1) <= 1
  const order = boxPlanDefaults.protectiveOrder.value
  const found = isHeld ? undefined : limits?.protection?.highPass.find(each => each.order === order)
  const cornerHz = Math.max(found?.cornerHz ?? 0, radiatorHz)
  return cornerHz === 0 ? undefined : Math.max(planDefaults.lowestCornerHz.value, Math.ceil(cornerHz))
}

const lowPass = ({ crossoverHz }: BoxBrief) =>
  ({
    kind: 'low-pass',
    family: 'butterworth',
    order: planDefaults.crossoverOrder.value,
    cornerHz: crossoverHz
  }) as const

const protectiveHighPass = (cornerHz: number) =>
  ({ kind: 'high-pass', family: 'butterworth', order: boxPlanDefaults.protectiveOrder.value, cornerHz }) as const

/** What the plan sets before the amplifier; port and response are computed with the same. */
export const planFilters = (brief: BoxBrief, highPassHz?: number) => [
  lowPass(brief),
  ...(highPassHz === undefined ? [] : [protectiveHighPass(highPassHz)])
]
