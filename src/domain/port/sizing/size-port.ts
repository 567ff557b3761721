/** POST /v1/ports/sizing: area for the air speed, length for the tuning, and an honest word where it does not fit. */
import type { PortDesign, PortSizing, PortSizingRequest } from '../../../contract/ports/port-sizing.ts'
import type { SourceId } from '../../../contract/sources/source.ts'
import { type Air, airOf } from '../../air/air.ts'
import { type Assumptions, assumptions } from '../../assume.ts'
import { isComputable } from '../../computable.ts'
import { DesignError } from '../../design-error.ts'
import { givenDriverCautions } from '../../driver/given-driver-cautions.ts'
import { filterDefaults } from '../../filter/defaults.ts'
import type { Outcome } from '../../outcome.ts'
import { present } from '../../present.ts'
import { say } from '../../say.ts'
import { portSpeeds } from '../air-speed.ts'
import { equivalentRadiusM, tuningHz } from '../port-length.ts'
import type { PortShape } from '../port-shape.ts'
import { portSizingDefaults } from './defaults.ts'
import { portBasis } from './port-basis.ts'
import { portShapes } from './port-candidates.ts'
import { portCautions } from './port-cautions.ts'
import { coneAreaM2, portDemand } from './port-demand.ts'
import { effectiveOfM, type PortSetting, physicalLengthM, portDesign, round, slot } from './port-design.ts'
import type { PortWish } from './port-sizing.ts'
import { type Room, waysOut } from './ways-out.ts'

/**
 * @throws DesignError `missing-input`, `conflicting-input`, `out-of-range`
 * @validity Lumped port in a lumped box, linear: the speed at full drive is what the port would carry without compression.
 */
export function sizePort(request: PortSizingRequest): Outcome<PortSizing> {
  const assume = assumptions()
  const air = airOf(request.air, assume)
  const wish = request.port ?? { kind: portSizingDefaults.kind.value }
  if (request.port === undefined) assume.note('port.kind', portSizingDefaults.kind.value, portSizingDefaults.kind)
  const room = roomOf(request, assume)
  const unset = settingOf(request, wish, air, room, assume)
  const setting = { ...unset, tuningHz: tuningOf(request, wish, unset) }
  const limitMPerS = limitOf(request, assume)
  const demand = portDemand(request, { tuningHz: setting.tuningHz, limitMPerS, air }, assume)
  const full: PortSetting = { ...setting, ...present({ demand }) }
  const result = checked(chosen(request, wish, full, room))
  return {
    result,
    cautions: [
      ...(request.driver === undefined ? [] : givenDriverCautions(request.driver, air)),
      ...portCautions(result, full)
    ],
    assumed: assume.list,
    sources: sourcesOf(result),
    basis: portBasis(result, full)
  }
}

function chosen(request: PortSizingRequest, wish: PortWish, setting: PortSetting, room: Room): PortSizing {
  const { demand, roomM } = setting
  const shaped = portShapes(wish, demand?.areaM2, shape => physicalLengthM(shape, setting) <= roomM)
  const designs = shaped.map(shape => ({ shape, design: portDesign(shape, setting) }))
  const first = (judge: (design: PortDesign) => number) =>
    [...designs].sort((a, b) => judge(a.design) - judge(b.design))[0] as (typeof designs)[number]
  const { design: recommended } = first(design => buildCost(design, roomM))
  const cones = coneAreaM2(request, setting.air)
  return {
    tuningHz: setting.tuningHz,
    ...present({ demand }),
    fits: recommended.fits,
    recommended,
    candidates: designs.map(({ design }) => design),
    waysOut: recommended.fits ? [] : waysOut(first(wishCost).shape, setting, room, cones)
  }
}

function limitOf(request: PortSizingRequest, assume: Assumptions): number {
  const mouth = assume.take(request.mouth, 'mouth', portSizingDefaults.mouth)
  const rule = mouth === 'sharp' ? portSizingDefaults.sharpSpeed : portSizingDefaults.flaredSpeed
  return assume.work(request.airSpeedLimitMPerS, 'airSpeedLimitMPerS', portSpeeds[mouth], rule)
}

function roomOf({ space, netVolumeM3 }: PortSizingRequest, assume: Assumptions): Room {
  const { straightShare, bentShare } = portSizingDefaults
  const why = `${straightShare.value} times the cube root of the net volume, no space being given`
  const usualM = straightShare.value * Math.cbrt(netVolumeM3)
  const straightM = assume.work(space?.straightM, 'space.straightM', usualM, { ...straightShare, why })
  const bentM = assume.work(space?.bentM, 'space.bentM', bentShare.value * straightM, bentShare)
  return { straightM, bentM }
}

function settingOf(
  request: PortSizingRequest,
  wish: PortWish,
  air: Air,
  room: Room,
  assume: Assumptions
): Omit<PortSetting, 'tuningHz'> {
  const { netVolumeM3: volumeM3, ends } = request
  const bends = request.bends ?? 0
  const isSlot = wish.kind === 'slot'
  const walls = isSlot ? assume.take(wish.walls, 'port.walls', portSizingDefaults.walls) : 'own'
  const endModel = request.endModel ?? 'convention'
  const needsHeight = isSlot && walls === 'full-width' && endModel === 'by-shape'
  const chamberHeightM = needsHeight
    ? assume.work(wish.chamberHeightM, 'port.chamberHeightM', Math.cbrt(volumeM3), portSizingDefaults.chamberHeight)
    : ((isSlot ? wish.chamberHeightM : undefined) ?? Math.cbrt(volumeM3))
  return {
    air,
    volumeM3,
    ends: {
      inner: assume.take(ends?.inner, 'ends.inner', portSizingDefaults.innerEnd),
      outer: assume.take(ends?.outer, 'ends.outer', portSizingDefaults.outerEnd)
    },
    endModel,
    walls,
    chamberHeightM,
    bends,
    mouth: request.mouth ?? 'sharp',
    flareM: flareOf(request, wish, assume),
    lowPassHz: lowPassOf(request, assume),
    roomM: bends > 0 ? room.bentM : room.straightM
  }
}

/** The lowest corner among the filters stands in for the end of the range. */
function lowPassOf({ lowPassHz, filters = [] }: PortSizingRequest, assume: Assumptions): number {
  const corners = filters.flatMap(filter => (filter.kind === 'low-pass' ? [filter.cornerHz] : []))
  if (corners.length === 0) return assume.take(lowPassHz, 'lowPassHz', filterDefaults.lowPassHz)
  return assume.work(lowPassHz, 'lowPassHz', Math.min(...corners), portSizingDefaults.lowPassGiven)
}

function flareOf({ mouth }: PortSizingRequest, wish: PortWish, assume: Assumptions): number {
  if (wish.kind === 'slot') return wish.flareRadiusM ?? 0
  if (mouth !== 'flared') return wish.flareRadiusM ?? 0
  return assume.take(wish.flareRadiusM, 'port.flareRadiusM', portSizingDefaults.flareRadiusM)
}

/** As asked, or that of a port given whole. @throws DesignError where it is told twice or not at all */
function tuningOf(request: PortSizingRequest, wish: PortWish, unset: Omit<PortSetting, 'tuningHz'>): number {
  if (request.tuningHz !== undefined) {
    if (wish.lengthM === undefined) return request.tuningHz
    const detail = say('refused.give-the-tuning-from-which-the')
    throw new DesignError('conflicting-input', { field: 'port.lengthM', detail })
  }
  const shape = wholeShape(wish)
  if (wish.lengthM === undefined || shape === undefined) {
    const detail = say('refused.give-the-tuning-or-a-port')
    throw new DesignError('missing-input', { field: 'tuningHz', detail })
  }
  const setting = { ...unset, tuningHz: 1 }
  const effective = effectiveOfM(wish.lengthM, shape, setting, setting.endModel)
  return tuningHz(effective, request.netVolumeM3, shape, unset.air.soundSpeedMPerS)
}

function wholeShape(wish: PortWish): PortShape | undefined {
  const count = wish.count ?? 1
  if (wish.kind === 'round') return wish.diameterM === undefined ? undefined : round(count, wish.diameterM)
  return wish.heightM === undefined ? undefined : slot(count, wish.widthM, wish.heightM)
}

/** What can be built comes first, then the lowest speed above the limit, then few ports and short ones. */
function buildCost(
  { fits, withinLimit, airSpeedMPerS = 0, count, lengthM, areaM2 }: PortDesign,
  roomM: number
): number {
  if (fits) return 10 * count + Math.abs(lengthM)
  const buildable = lengthM <= roomM && lengthM >= equivalentRadiusM(areaM2)
  return (buildable ? 1e3 : 1e6) + (withinLimit === false ? 100 * airSpeedMPerS : 0) + 10 * count + Math.abs(lengthM)
}

/** The port one would want if there were room: within the limit, few ports, short. */
function wishCost({ withinLimit, count, lengthM }: PortDesign): number {
  return (withinLimit === false ? 1e3 : 0) + 10 * count + Math.abs(lengthM)
}

/** @throws DesignError `out-of-range` for sizes so far apart that nothing can be computed */
function checked(result: PortSizing): PortSizing {
  if (isComputable(result)) return result
  throw new DesignError('out-of-range', {
    field: 'port',
    detail: say('refused.box-driver-and-port-lie-too')
  })
}

function sourcesOf({ demand, recommended }: PortSizing): readonly SourceId[] {
  const ends: readonly SourceId[] =
    recommended.kind === 'slot' ? ['kergomard-garcia-1987', 'rectangular-piston'] : ['dalmont-2001-ends']
  return [
    'helmholtz-resonator',
    'levine-schwinger-1948',
    ...ends,
    ...(recommended.bends > 0 ? (['mitred-bend'] as const) : []),
    ...(demand === undefined ? [] : (['small-1973-vented-box', 'practice-port-speed'] as const)),
    ...(demand?.by === 'network' ? (['acoustic-network'] as const) : []),
    'port-friction',
    ...(recommended.kind === 'slot' ? (['practice-slot-shape'] as const) : []),
    'ours-port-limits'
  ]
}
