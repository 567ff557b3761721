/** The port of a vented candidate: sized at full drive, kept quiet as far as the space lets it be. */
import type { BoxPort } from '../domain/box/box-request.ts'
import type { PortRequest } from '../domain/enclosure/request.ts'
import type { PortDesign, PortSizing, PortSizingRequest } from '../domain/port/port-sizing.ts'
import { sizePort } from '../domain/port/size-port.ts'
import { attempt, type Part } from './part.ts'
import { acousticDriver, type DriverPart, joinedDrivers } from './plan-drivers.ts'
import type { JoinedDrivers } from './plan-load.ts'
import type { PlanRequest } from './plan-request.ts'

export type PortPart = Part<PortSizingRequest, PortSizing>

/** Peak air speeds tried in turn where the caller states none: quiet, audible up close, the most that common practice allows. */
export const AIR_SPEEDS_TRIED = [17, 25, 30] as const

export const portShapes = ['round', 'slot'] as const
export type PortShape = (typeof portShapes)[number]
/** Tubes first, then a slot of half the box's width, which is less flat, one of the whole width, one up a side and along the back. */
export const portFormsTried = ['round', 'half-slot', 'slot', 'side-slot'] as const
export type PortForm = (typeof portFormsTried)[number]

export interface PortQuestion {
  readonly netVolumeM3: number
  readonly tuningHz: number
  readonly leakQ?: number
  readonly airSpeedMPerS: number
  readonly form: PortForm
  /** Corner of the protective high-pass, once it is known. */
  readonly highPassHz?: number
}

/** Left free behind an inner mouth, and for the bend of a folded slot; the layout of the box then measures it. Ours. */
const MOUTH_ROOM_M = 0.1

/** A slot along the floor, folded along floor and back where it is long, or along a side and the back; its flat mouth needs the end corrections of its shape. */
function wish({ car, board }: PlanRequest, form: PortForm): Pick<PortSizingRequest, 'port' | 'endModel' | 'space'> {
  const { coveringM = 0, clearanceM = 0, ...space } = car.space
  const inside = (sizeM: number | undefined) => (sizeM === undefined ? undefined : sizeM - 2 * (coveringM + clearanceM))
  const [widthM, heightM, depthM] = [inside(space.widthM), inside(space.heightM), inside(space.depthM)]
  const straightM = depthM === undefined ? undefined : depthM - board.thicknessM - MOUTH_ROOM_M
  if (form === 'round' || widthM === undefined || heightM === undefined) {
    return { port: { kind: 'round' }, ...(straightM === undefined ? {} : { space: { straightM } }) }
  }
  const [clearWidthM, clearHeightM] = [widthM - 2 * board.thicknessM, heightM - 2 * board.thicknessM]
  const foldedM = (form === 'side-slot' ? clearWidthM : clearHeightM) - MOUTH_ROOM_M
  const slot = {
    slot: { widthM: clearWidthM, walls: 'full-width' },
    'half-slot': { widthM: clearWidthM / 2, walls: 'one-shared' },
    'side-slot': { widthM: clearHeightM, walls: 'full-width' }
  } as const
  return {
    port: { kind: 'slot', count: 1, ...slot[form] },
    endModel: 'by-shape',
    ...(straightM === undefined ? {} : { space: { straightM: straightM + foldedM } })
  }
}

export function planPort(
  request: PlanRequest,
  drivers: DriverPart & { readonly done: true },
  joined: JoinedDrivers,
  { airSpeedMPerS, form, ...question }: PortQuestion
): PortPart {
  const { air } = request
  return attempt(
    {
      ...question,
      driver: acousticDriver(drivers.outcome.result),
      drivers: joinedDrivers(request, joined),
      source: { voltageV: joined.targetVoltageV, seriesOhm: joined.seriesOhm },
      airSpeedLimitMPerS: airSpeedMPerS,
      ...wish(request, form),
      ...(air === undefined ? {} : { air })
    },
    sizePort
  )
}

/** A saw or a tube is cut to the millimetre. */
const toMillimetre = (lengthM: number) => Math.round(lengthM * 1000) / 1000

/** A slot is given by its tuning, so that the layout finds the centre line of its bends. */
export function boxPort(design: PortDesign, form: PortForm): BoxPort | undefined {
  const { kind, count, diameterM, widthM, heightM, lengthM, tuningHz, endFactor } = design
  if (kind === 'round' && diameterM !== undefined) {
    return { kind, count, innerDiameterM: diameterM, lengthM: toMillimetre(lengthM) }
  }
  if (widthM === undefined || heightM === undefined) return undefined
  const slot = { kind: 'slot', heightM: toMillimetre(heightM), tuningHz, endFactor } as const
  return form === 'side-slot' ? { ...slot, along: 'right' } : { ...slot, widthM }
}

export function acousticPort({ count, areaM2, lengthM, endFactor }: PortDesign): PortRequest {
  return { count, areaM2, lengthM: toMillimetre(lengthM), endFactor }
}
