/** The port of a vented candidate: sized at full drive, kept quiet as far as the space lets it be. */
import type { PortRequest } from '../../../contract/enclosures/enclosure.ts'
import type { PortDesign, PortSizing, PortSizingRequest } from '../../../contract/ports/port-sizing.ts'
import type { BoxPort } from '../../../domain/box/request/box-request.ts'
import { plainEndsM, slotMouth } from '../../../domain/port/flare.ts'
import { equivalentRadiusM } from '../../../domain/port/port-length.ts'
import { portSizingDefaults } from '../../../domain/port/sizing/defaults.ts'
import { sizePort } from '../../../domain/port/sizing/size-port.ts'
import { present } from '../../../domain/present.ts'
import { slotOfArea, tubesOfArea } from '../../designer/room/ports-of-area.ts'
import { type BoxBrief, isDivided } from '../../request/box-brief.ts'
import type { Part } from '../../request/part.ts'
import { onSawStep } from '../../request/plan-imperial.ts'
import { boxPlanDefaults } from './defaults.ts'
import { planFilters } from './plan-response.ts'
import type { Setting } from './setting.ts'

export type PortPart = Part<PortSizingRequest, PortSizing>

/** Tubes first, then slots along the floor of half the box's width and of the whole, or a third where that would be flat, and one up a side. */
const portFormsTried = ['round', 'half-slot', 'slot', 'side-slot'] as const
/** Of an area that is given, the slots no wider than they have to be. */
const portsOfAreaTried = ['round', 'floor-slot', 'wall-slot'] as const
type PortForm = (typeof portFormsTried)[number] | (typeof portsOfAreaTried)[number]

/** One speed where the caller states it. */
/** One speed where the caller states it; with flares the air is heard only from the second. */
export const airSpeedsTried = ({ enclosure: { airSpeedMPerS, portFlareM } }: BoxBrief): readonly number[] => {
  if (airSpeedMPerS !== undefined) return [airSpeedMPerS]
  const all = boxPlanDefaults.airSpeedsTriedMPerS.value
  return portFlareM === undefined ? all : all.slice(1)
}

export interface PortWish {
  readonly airSpeedMPerS: number
  readonly form: PortForm
}

/** Quiet before loud, tubes before slots; of an area that is given each form once, as fast as the air may be. */
export function portsTried(brief: BoxBrief): readonly PortWish[] {
  const { enclosure, portShapes } = brief
  const { airSpeedMPerS: given, portAreaM2 } = enclosure
  const usual = portAreaM2 === undefined ? airSpeedsTried(brief) : boxPlanDefaults.airSpeedsTriedMPerS.value.slice(-1)
  const forms: readonly PortForm[] = portAreaM2 === undefined ? portFormsTried : portsOfAreaTried
  const speeds = given === undefined ? usual : [given]
  return speeds.flatMap(airSpeedMPerS =>
    forms.filter(form => portShapes.some(shape => form.endsWith(shape))).map(form => ({ airSpeedMPerS, form }))
  )
}

interface PortQuestion {
  /** Of the chamber it opens from. */
  readonly netVolumeM3: number
  /** Of a band-pass: the closed chamber behind the drivers. */
  readonly rearVolumeM3?: number
  readonly tuningHz: number
  readonly leakQ?: number
  readonly airSpeedMPerS: number
  readonly form: PortForm
  /** Corner of the protective high-pass, once it is known. */
  readonly highPassHz?: number
}

type Wish = Pick<PortSizingRequest, 'port' | 'mouth' | 'endModel' | 'space'>

const isSideways = (form: PortForm) => form === 'side-slot' || form === 'wall-slot'

/** Which way a tube goes from its face. */
const sizeBehind = {
  front: 'depthM',
  back: 'depthM',
  left: 'widthM',
  right: 'widthM',
  top: 'heightM',
  bottom: 'heightM'
} as const

const roomBehindPort = ({ space, portFace }: BoxBrief): number | undefined => space[sizeBehind[portFace]]

/** Room for the length of a port, where the space is known. */
const within = (straightM: number | undefined, foldedM = 0): Pick<Wish, 'space'> =>
  straightM === undefined ? {} : { space: { straightM: straightM + foldedM } }

/** A port of the area asked for; whether it finds its length in the box the layout tells. */
function wishOfArea(brief: BoxBrief, form: PortForm, areaM2: number): Wish {
  const { widthM, heightM, depthM } = brief.space
  if (form === 'round') {
    const tubes = tubesOfArea(areaM2) ?? { count: 1, diameterM: Math.sqrt((4 * areaM2) / Math.PI) }
    const straightM = roomBehindPort(brief)
    return { port: { kind: 'round', ...tubes }, ...within(straightM) }
  }
  const along = isSideways(form) ? widthM : heightM
  const straightM = depthM === undefined || along === undefined ? undefined : depthM + along - brief.board.thicknessM
  return {
    port: { kind: 'slot', count: 1, ...slotOfArea(areaM2), walls: 'one-shared' },
    endModel: 'by-shape',
    ...within(straightM)
  }
}

/** A slot along the floor or up a side, folded along the back where it is long; its flat mouth needs the end corrections of its shape. */
function wish(brief: BoxBrief, form: PortForm): Wish {
  const { board, enclosure } = brief
  if (enclosure.portAreaM2 !== undefined) return wishOfArea(brief, form, enclosure.portAreaM2)
  const { coveringM = 0, clearanceM = 0, ...space } = brief.space
  const inside = (sizeM: number | undefined) => (sizeM === undefined ? undefined : sizeM - 2 * (coveringM + clearanceM))
  const [widthM, heightM] = [inside(space.widthM), inside(space.heightM)]
  const behindM = inside(form === 'round' ? roomBehindPort(brief) : space.depthM)
  const straightM = behindM === undefined ? undefined : behindM - board.thicknessM - boxPlanDefaults.mouthRoomM.value
  if (form === 'round' || widthM === undefined || heightM === undefined) {
    return { port: { kind: 'round' }, ...within(straightM) }
  }
  const [clearWidthM, clearHeightM] = [widthM - 2 * board.thicknessM, heightM - 2 * board.thicknessM]
  const foldedM = (isSideways(form) ? clearWidthM : clearHeightM) - boxPlanDefaults.mouthRoomM.value
  const shared = (widthM: number) => ({ widthM, walls: 'one-shared' }) as const
  const whole = (widthM: number) => ({ widthM, walls: 'full-width' }) as const
  const third = clearWidthM > portSizingDefaults.flattestSlot.value * boxPlanDefaults.usualSlotM.value
  const slot = third ? shared(clearWidthM * boxPlanDefaults.flatSlotShare.value) : whole(clearWidthM)
  const half = form === 'half-slot' ? shared(clearWidthM / 2) : slot
  return {
    port: { kind: 'slot', count: 1, ...(isSideways(form) ? whole(clearHeightM) : half) },
    endModel: 'by-shape',
    ...within(straightM, foldedM)
  }
}

/** The same with mouths that open. */
function flared({ enclosure: { portFlareM } }: BoxBrief, { port, ...wish }: Wish): Wish {
  if (portFlareM === undefined || port === undefined) return { ...wish, ...present({ port }) }
  return { ...wish, mouth: 'flared', port: { ...port, flareRadiusM: portFlareM } }
}

export function planPort(
  { brief, driver, drivers, joined }: Setting,
  { airSpeedMPerS, form, highPassHz, ...question }: PortQuestion
): PortPart {
  const { air, run } = brief
  return run(
    {
      ...question,
      driver,
      drivers,
      source: { voltageV: joined.targetVoltageV, seriesOhm: joined.seriesOhm },
      filters: planFilters(brief, highPassHz),
      airSpeedLimitMPerS: airSpeedMPerS,
      ...flared(brief, wish(brief, form)),
      ...present({ air })
    },
    sizePort
  )
}

/** A port whose air is told by the volume that the cones sweep, of drivers that nothing else is known of. */
export function sweptPort(
  brief: BoxBrief,
  { airSpeedMPerS, form, netVolumeM3, tuningHz }: PortQuestion,
  sweptVolumeM3: number | undefined
): PortPart {
  const { air, crossoverHz: lowPassHz, run } = brief
  return run(
    {
      netVolumeM3,
      tuningHz,
      lowPassHz,
      airSpeedLimitMPerS: airSpeedMPerS,
      ...flared(brief, wish(brief, form)),
      ...present({ sweptVolumeM3, air })
    },
    sizePort
  )
}

/** As a saw or a tube is cut. */
const toMillimetre = (lengthM: number) => Math.round(lengthM * 1000) / 1000

/** A slot is given by its tuning, so that the layout finds the centre line of its bends. */
export function boxPort(brief: BoxBrief, design: PortDesign, form: PortForm): BoxPort | undefined {
  const { kind, count, diameterM, widthM, heightM, lengthM, tuningHz } = design
  const { portFlareM: flareM } = brief.enclosure
  const mouths = present({ flareRadiusM: flareM })
  if (kind === 'round' && diameterM !== undefined) {
    const { portFace: face } = brief
    const onFace = face === 'front' ? {} : { face }
    const chamber = isDivided(brief) ? ({ chamber: 'front' } as const) : {}
    return {
      kind,
      count,
      innerDiameterM: diameterM,
      lengthM: onSawStep(brief, lengthM),
      ...mouths,
      ...onFace,
      ...chamber
    }
  }
  if (widthM === undefined || heightM === undefined) return undefined
  // The layout adds the flares to the plain ends by itself.
  const radiusM = equivalentRadiusM(design.areaM2)
  const endFactor = plainEndsM(design.endFactor * radiusM, slotMouth(widthM, heightM), flareM ?? 0) / radiusM
  const slot = { kind: 'slot', heightM: onSawStep(brief, heightM), tuningHz, endFactor, ...mouths } as const
  const across = { widthM: brief.sawStepM === undefined ? widthM : onSawStep(brief, widthM) }
  if (form === 'side-slot') return { ...slot, along: 'right' }
  return form === 'wall-slot' ? { ...slot, ...across, along: 'right' } : { ...slot, ...across }
}

/** The port as the response takes it, its friction in it. */
export function acousticPort({ count, areaM2, lengthM, endFactor, lossQ, lossFactor }: PortDesign): {
  readonly port: PortRequest
  readonly portLossFactor: number
} {
  return { port: { count, areaM2, lengthM: toMillimetre(lengthM), endFactor, lossQ }, portLossFactor: lossFactor }
}
