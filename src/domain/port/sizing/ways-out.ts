/** What would fit where the port that is wanted does not, each way computed. */

import type { PortWayOut } from '../../../contract/ports/port-sizing.ts'
import { bisect } from '../../../numeric/bisect.ts'
import { inDigits, inLitres, inMm } from '../../digits.ts'
import { present } from '../../present.ts'
import { say, worded } from '../../say.ts'
import { portSpeeds } from '../air-speed.ts'
import { mitreExtraM } from '../bends.ts'
import { effectiveLengthM, equivalentRadiusM, tuningHz } from '../port-length.ts'
import type { PortShape } from '../port-shape.ts'
import { portSizingDefaults } from './defaults.ts'
import { effectiveOfM, isFlat, type PortSetting, physicalLengthM, slot } from './port-design.ts'

export interface Room {
  readonly straightM: number
  readonly bentM: number
}

const cm2 = (areaM2: number) => `${inDigits(areaM2 * 1e4)} cm²`

export function waysOut(shape: PortShape, setting: PortSetting, room: Room, coneAreaM2: number | undefined) {
  const lengthM = physicalLengthM(shape, setting)
  const tooLong = lengthM > setting.roomM
  return [
    ...(tooLong ? bent(shape, setting, lengthM, room) : []),
    ...(tooLong ? smaller(shape, setting) : []),
    ...(tooLong ? fewer(shape, setting) : []),
    ...(tooLong ? larger(shape, setting) : []),
    ...(tooLong ? higher(shape, setting) : []),
    ...(tooLong ? smallerBox(shape, setting) : []),
    ...(tooLong ? flared(shape, setting) : []),
    ...(tooLong ? gentler(shape, setting) : []),
    ...(tooLong ? [] : wider(shape, setting)),
    ...(isFlat(shape) ? cheeked(shape, setting) : []),
    ...radiator(shape, setting, coneAreaM2)
  ]
}

function bent(shape: PortShape, setting: PortSetting, lengthM: number, { bentM }: Room): readonly PortWayOut[] {
  const longer = lengthM + mitreExtraM(shape.depthM)
  if (setting.bends > 0 || longer > bentM) return []
  const detail = say('port-way.bend', { length: inMm(longer), room: inMm(bentM) })
  return [{ change: 'one-bend', ...worded({ detail }), lengthM: longer }]
}

/** The same shape shrunk until its length fits. */
const scaled = (shape: PortShape, share: number): PortShape =>
  shape.kind === 'round'
    ? { ...shape, areaM2: shape.areaM2 * share, depthM: shape.depthM * Math.sqrt(share) }
    : { ...shape, areaM2: shape.areaM2 * share, depthM: shape.depthM * share }

/** The most of the shape that fits; nothing where even a fiftieth is too long. */
function largestThatFits(shape: PortShape, setting: PortSetting): PortShape | undefined {
  const excess = (share: number) => physicalLengthM(scaled(shape, share), setting) - setting.roomM
  return excess(0.02) > 0 ? undefined : scaled(shape, bisect(excess, 0.02, 1))
}

const judgement = (speed: number) =>
  speed <= portSpeeds.highest
    ? say('port-way.smaller-area.audible', { speed: inDigits(speed), highest: portSpeeds.highest })
    : say('port-way.smaller-area.too-fast', { speed: inDigits(speed) })

function smaller(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const fitted = largestThatFits(shape, setting)
  if (fitted === undefined) return []
  const total = fitted.count * fitted.areaM2
  const speed = setting.demand === undefined ? undefined : setting.demand.peakFlowM3PerS / total
  const judged = speed === undefined ? '' : judgement(speed)
  return [
    {
      change: 'smaller-area',
      ...worded({ detail: say('port-way.smaller-area', { area: cm2(total), room: inMm(setting.roomM), judged }) }),
      totalAreaM2: total,
      lengthM: setting.roomM,
      ...present({ airSpeedMPerS: speed })
    }
  ]
}

/** More area where the port came out shorter than its own radius. */
function wider(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const excess = (share: number) => {
    const tried = scaled(shape, share)
    return physicalLengthM(tried, setting) - equivalentRadiusM(tried.areaM2)
  }
  if (excess(1) >= 0 || excess(400) < 0) return []
  const fitted = scaled(shape, bisect(excess, 1, 400))
  const total = fitted.count * fitted.areaM2
  const lengthM = physicalLengthM(fitted, setting)
  const detail = say('port-way.larger-area', { area: cm2(total), length: inMm(lengthM) })
  return [{ change: 'larger-area', ...worded({ detail }), totalAreaM2: total, lengthM }]
}

function fewer(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  for (let count = shape.count - 1; count > 0; count--) {
    const less = { ...shape, count }
    const lengthM = physicalLengthM(less, setting)
    if (lengthM > setting.roomM) continue
    const total = count * shape.areaM2
    const speed = setting.demand === undefined ? undefined : setting.demand.peakFlowM3PerS / total
    const told = speed === undefined ? '' : say('port-way.speed', { speed: inDigits(speed) })
    const detail = say('port-way.fewer', { fewer: count, count: shape.count, length: inMm(lengthM), speed: told })
    const speeds = speed === undefined ? {} : { airSpeedMPerS: speed }
    return [{ change: 'fewer-ports', ...worded({ detail }), count, lengthM, totalAreaM2: total, ...speeds }]
  }
  return []
}

function larger(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const effective = effectiveOfM(setting.roomM, shape, setting, setting.endModel)
  const needed = effectiveLengthM(setting.tuningHz, setting.volumeM3, shape, setting.air.soundSpeedMPerS)
  const netVolumeM3 = (setting.volumeM3 * needed) / effective
  const detail = say('port-way.larger-box', { volume: inLitres(netVolumeM3), room: inMm(setting.roomM) })
  return [{ change: 'larger-box', ...worded({ detail }), netVolumeM3 }]
}

function higher(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const effective = effectiveOfM(setting.roomM, shape, setting, setting.endModel)
  const tuned = tuningHz(effective, setting.volumeM3, shape, setting.air.soundSpeedMPerS)
  return [
    {
      change: 'higher-tuning',
      ...worded({ detail: say('port-way.tuning', { room: inMm(setting.roomM), tuning: inDigits(tuned) }) }),
      tuningHz: tuned
    }
  ]
}

/** Less air and a higher tuning together: the alignment stays one, only smaller. */
function smallerBox(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const netVolumeM3 = portSizingDefaults.smallerBoxShare.value * setting.volumeM3
  const effective = effectiveOfM(setting.roomM, shape, setting, setting.endModel)
  const tuned = tuningHz(effective, netVolumeM3, shape, setting.air.soundSpeedMPerS)
  const detail = say('port-way.smaller-box', {
    volume: inLitres(netVolumeM3),
    tuning: inDigits(tuned),
    room: inMm(setting.roomM)
  })
  return [{ change: 'smaller-box-higher-tuning', ...worded({ detail }), netVolumeM3, tuningHz: tuned }]
}

/** Flares are heard later, so less area does, if that fits. */
function flared(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const { demand, mouth } = setting
  if (shape.kind === 'slot' || mouth === 'flared' || demand === undefined) return []
  const share = demand.peakFlowM3PerS / portSpeeds.flared / (shape.count * shape.areaM2)
  const less = scaled(shape, share)
  const lengthM = physicalLengthM(less, setting)
  if (share >= 1 || lengthM > setting.roomM) return []
  const total = less.count * less.areaM2
  const detail = say('port-way.flare', { limit: portSpeeds.flared, area: cm2(total), length: inMm(lengthM) })
  return [
    { change: 'flared-mouths', ...worded({ detail }), totalAreaM2: total, lengthM, airSpeedMPerS: portSpeeds.flared }
  ]
}

/** The air follows the voltage: the share of the power at which the area that fits keeps the limit. */
function gentler(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const { demand } = setting
  const fitted = largestThatFits(shape, setting)
  if (demand?.by !== 'network' || fitted === undefined) return []
  const total = fitted.count * fitted.areaM2
  const powerShare = ((demand.limitMPerS * total) / demand.peakFlowM3PerS) ** 2
  if (powerShare >= 1) return []
  const detail = say('port-way.drive', {
    area: cm2(total),
    limit: inDigits(demand.limitMPerS),
    share: inDigits(powerShare * 100, 2)
  })
  return [
    { change: 'less-drive', ...worded({ detail }), powerShare, totalAreaM2: total, airSpeedMPerS: demand.limitMPerS }
  ]
}

/** The same area in a slot that a cheek keeps from the whole width. */
function cheeked(shape: PortShape, setting: PortSetting): readonly PortWayOut[] {
  const heightM = Math.sqrt(shape.areaM2 / portSizingDefaults.cheekedSlot.value)
  const narrower = slot(shape.count, portSizingDefaults.cheekedSlot.value * heightM, heightM)
  const lengthM = physicalLengthM(narrower, { ...setting, walls: 'one-shared' })
  if (isFlat(narrower) || lengthM <= 0) return []
  const detail = say('port-way.cheek', {
    width: inMm(narrower.widthM ?? 0),
    height: inMm(heightM),
    length: inMm(lengthM)
  })
  return [{ change: 'narrower-slot', ...worded({ detail }), totalAreaM2: narrower.count * narrower.areaM2, lengthM }]
}

/**
 * Mass of a passive radiator that stands in for the port: the same acoustic mass.
 *
 *   m = ρ·Leff/(n·S)·Sp²
 *
 * @validity Suspension much softer than the box; with twice the compliance of the box the mass is 1.5 times this.
 */
function radiator(shape: PortShape, setting: PortSetting, coneAreaM2: number | undefined): readonly PortWayOut[] {
  const effective = effectiveLengthM(setting.tuningHz, setting.volumeM3, shape, setting.air.soundSpeedMPerS)
  const acousticMass = (setting.air.densityKgPerM3 * effective) / (shape.count * shape.areaM2)
  const radiatorAreaM2 = 2 * (coneAreaM2 ?? 2 * shape.count * equivalentRadiusM(shape.areaM2) ** 2 * Math.PI)
  const radiatorMassKg = acousticMass * radiatorAreaM2 ** 2
  const detail = say('port-way.radiator', { area: cm2(radiatorAreaM2), mass: inDigits(radiatorMassKg * 1e3) })
  return [{ change: 'passive-radiator', ...worded({ detail }), radiatorAreaM2, radiatorMassKg }]
}
