/** One port of a given shape: its length for the tuning, its speed, and what speaks for or against it. */

import type { PortDemand, PortDesign } from '../../../contract/ports/port-sizing.ts'
import type { EndModel, EndSituation, PortMouth, SlotWalls } from '../../../contract/ports/words.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import type { Air } from '../../air/air.ts'
import { inDigits, inMm } from '../../digits.ts'
import { present } from '../../present.ts'
import { say, worded } from '../../say.ts'
import { mitreExtraM } from '../bends.ts'
import { conventionalEndFactor, exactEndFactor, fullWidthSlotEndM, slotEndM } from '../end-correction.ts'
import { flaredEndM, roundMouth, slotMouth } from '../flare.ts'
import { hydraulicDiameterM, lossFactor, wallFrictionQ } from '../port-friction.ts'
import { effectiveLengthM, equivalentRadiusM, pipeResonanceHz, tuningHz, waveguideTuningRatio } from '../port-length.ts'
import type { PortShape } from '../port-shape.ts'
import { portSizingDefaults } from './defaults.ts'

export interface PortSetting {
  readonly air: Air
  readonly volumeM3: number
  readonly tuningHz: number
  readonly ends: { readonly inner: EndSituation; readonly outer: EndSituation }
  readonly endModel: EndModel
  readonly walls: SlotWalls
  readonly chamberHeightM: number
  readonly bends: number
  readonly mouth: PortMouth
  /** Radius of the rounding at both mouths. */
  readonly flareM: number
  readonly lowPassHz: number
  /** Longest centre line there is room for. */
  readonly roomM: number
  readonly demand?: PortDemand
}

export const round = (count: number, diameterM: number): PortShape => ({
  kind: 'round',
  count,
  areaM2: (Math.PI / 4) * diameterM ** 2,
  depthM: diameterM
})

export const slot = (count: number, widthM: number, heightM: number): PortShape => ({
  kind: 'slot',
  count,
  areaM2: widthM * heightM,
  depthM: heightM,
  widthM
})

/** Both ends together [m]. */
function endsM(shape: PortShape, setting: PortSetting, model: EndModel): number {
  const { inner, outer } = setting.ends
  const radius = equivalentRadiusM(shape.areaM2)
  const factors = model === 'convention' ? conventionalEndFactor : exactEndFactor
  if (shape.widthM === undefined) {
    const end = (factor: number) => flaredEndM(factor * radius, roundMouth(radius), setting.flareM)
    return end(factors[inner]) + end(factors[outer])
  }
  const size = { widthM: shape.widthM, heightM: shape.depthM }
  const mouth = slotMouth(size.widthM, size.heightM)
  const flared = (plainM: number) => flaredEndM(plainM, mouth, setting.flareM)
  if (model === 'convention') return flared(factors[inner] * radius) + flared(factors[outer] * radius)
  const outside = slotEndM({ ...size, situation: outer, alongWall: false })
  const fills = setting.walls === 'full-width' && setting.chamberHeightM > shape.depthM
  const inside = fills
    ? fullWidthSlotEndM(shape.depthM, setting.chamberHeightM)
    : slotEndM({ ...size, situation: inner, alongWall: setting.walls !== 'own' })
  return flared(inside) + flared(outside)
}

/** Physical length along the centre line [m]; zero or less where the area is too large for the tuning. */
export function physicalLengthM(shape: PortShape, setting: PortSetting, model = setting.endModel): number {
  const effective = effectiveLengthM(setting.tuningHz, setting.volumeM3, shape, setting.air.soundSpeedMPerS)
  return effective - endsM(shape, setting, model) + setting.bends * mitreExtraM(shape.depthM)
}

/** Effective length of a physical one [m]; no port is shorter than its two flares. */
export function effectiveOfM(lengthM: number, shape: PortShape, setting: PortSetting, model: EndModel): number {
  const straight = Math.max(2 * setting.flareM, lengthM - setting.bends * mitreExtraM(shape.depthM))
  return straight + endsM(shape, setting, model)
}

export function portDesign(shape: PortShape, setting: PortSetting): PortDesign {
  const { air, volumeM3, demand, endModel, bends } = setting
  const c = air.soundSpeedMPerS
  const lengthM = physicalLengthM(shape, setting)
  const effective = effectiveLengthM(setting.tuningHz, volumeM3, shape, c)
  const total = shape.count * shape.areaM2
  const airVolumeM3 = total * Math.max(0, lengthM)
  const other = endModel === 'convention' ? 'by-shape' : 'convention'
  const reasons = reasonsOf(shape, lengthM, effective, setting)
  const said = (isAgainst: boolean) => reasons.filter(reason => reason.against === isAgainst).map(({ text }) => text)
  const [against, beside] = [said(true), said(false)]
  return {
    kind: shape.kind,
    ...worded({ name: nameOf(shape), why: against.concat(beside) }),
    count: shape.count,
    ...(shape.widthM === undefined ? { diameterM: shape.depthM } : { widthM: shape.widthM, heightM: shape.depthM }),
    areaM2: shape.areaM2,
    totalAreaM2: total,
    lengthM,
    effectiveLengthM: effective,
    endFactor: endsM(shape, setting, endModel) / equivalentRadiusM(shape.areaM2),
    bends,
    hydraulicDiameterM: hydraulicDiameterM(shape),
    lossFactor: lossFactor(shape, lengthM, setting.mouth, bends),
    lossQ: wallFrictionQ(shape, lengthM, effective, setting.tuningHz, air),
    tuningHz: setting.tuningHz,
    ...speeds(total, demand),
    pipeResonanceHz: pipeResonanceHz(effective, c),
    waveguideTuningHz: setting.tuningHz * waveguideTuningRatio((total * effective) / volumeM3),
    airVolumeM3,
    otherEnds: {
      model: other,
      lengthM: physicalLengthM(shape, setting, other),
      tuningHz: tuningHz(effectiveOfM(lengthM, shape, setting, other), volumeM3, shape, c)
    },
    fits: against.length === 0
  }
}

function nameOf({ kind, count, depthM, widthM }: PortShape): Said {
  const size =
    kind === 'round'
      ? say('part.port-round', { diameter: inMm(depthM) })
      : say('part.port-slot', { width: inMm(widthM ?? 0), height: inMm(depthM) })
  return say('part.ports', { portCount: count, size })
}

function speeds(totalM2: number, demand: PortDemand | undefined) {
  if (demand === undefined) return {}
  const speed = demand.peakFlowM3PerS / totalM2
  return {
    airSpeedMPerS: speed,
    withinLimit: speed <= demand.limitMPerS * (1 + 1e-9),
    ...present({
      airSpeedHz: demand.peakFlowHz,
      airSpeedAtTuningMPerS: demand.flowAtTuningM3PerS === undefined ? undefined : demand.flowAtTuningM3PerS / totalM2
    })
  }
}

interface Reason {
  readonly against: boolean
  readonly text: Said
}

function reasonsOf(shape: PortShape, lengthM: number, effective: number, setting: PortSetting): readonly Reason[] {
  return [
    ...lengthReasons(shape, lengthM, setting),
    ...speedReasons(shape, setting),
    ...slotReasons(shape),
    ...pipeReasons(shape, effective, setting)
  ]
}

function lengthReasons(shape: PortShape, lengthM: number, setting: PortSetting): readonly Reason[] {
  const { roomM } = setting
  const radius = equivalentRadiusM(shape.areaM2)
  if (lengthM <= 0) {
    return [{ against: true, text: say('port-reason.no-length') }]
  }
  if (lengthM < radius) {
    return [{ against: true, text: say('port-reason.below-radius', { length: inMm(lengthM) }) }]
  }
  const flares = 2 * setting.flareM
  if (lengthM < flares) {
    return [{ against: true, text: say('port-reason.flares', { length: inMm(lengthM), flare: inMm(flares / 2) }) }]
  }
  const against = lengthM > roomM * (1 + 1e-9)
  return [{ against, text: say('port-reason.long', { length: inMm(lengthM), room: inMm(roomM) }) }]
}

export const isFlat = ({ widthM, depthM }: PortShape) =>
  widthM !== undefined &&
  (widthM > portSizingDefaults.flattestSlot.value * depthM * (1 + 1e-9) ||
    depthM < portSizingDefaults.lowestSlotM.value * (1 - 1e-9))

function slotReasons(shape: PortShape): readonly Reason[] {
  const { widthM, depthM } = shape
  if (widthM === undefined) return []
  const flat = say('port-reason.flat', { times: inDigits(widthM / depthM, 2), height: inMm(depthM) })
  if (!isFlat(shape)) return [{ against: false, text: flat }]
  const { flattestSlot, lowestSlotM } = portSizingDefaults
  const bounds = { flattest: flattestSlot.value, lowest: inMm(lowestSlotM.value) }
  return [{ against: true, text: say('port-reason.too-flat', { flat, ...bounds }) }]
}

function speedReasons(shape: PortShape, { demand }: PortSetting): readonly Reason[] {
  if (demand === undefined) return []
  const speed = demand.peakFlowM3PerS / (shape.count * shape.areaM2)
  const against = speed > demand.limitMPerS * (1 + 1e-9)
  return [{ against, text: say('port-reason.speed', { speed: inDigits(speed), limit: inDigits(demand.limitMPerS) }) }]
}

function pipeReasons(shape: PortShape, effective: number, setting: PortSetting): readonly Reason[] {
  const reasons: Reason[] = []
  const resonance = pipeResonanceHz(effective, setting.air.soundSpeedMPerS)
  if (resonance < portSizingDefaults.resonanceClear.value * setting.lowPassHz) {
    const against = resonance < portSizingDefaults.resonanceClose.value * setting.lowPassHz
    const times = inDigits(resonance / setting.lowPassHz, 2)
    const text = say('port-reason.pipe', { resonance: inDigits(resonance), times })
    reasons.push({ against, text })
  }
  const share = (shape.count * shape.areaM2 * effective) / setting.volumeM3
  if (share > portSizingDefaults.largePortShare.value) {
    const low = inDigits((1 - waveguideTuningRatio(share)) * 100, 2)
    reasons.push({
      against: false,
      text: say('port-reason.share', { share: inDigits(share * 100, 2), low })
    })
  }
  return reasons
}
