/** A port of given length, or of the length that a tuning wants with the air that is left. */

import type { RoundPort } from '../../../contract/boxes/box-hardware.ts'
import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import { DesignError } from '../../design-error.ts'
import { toMm } from '../../digits.ts'
import { flaredEndM, type GrowingArea, roundMouth, slotMouth } from '../../port/flare.ts'
import { type EndedOpening, endLengthM, equivalentRadiusM, lengthForTuning } from '../../port/port-length.ts'
import { say } from '../../say.ts'
import type { BoxPort } from '../request/box-request.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Inside } from '../shell/face.ts'
import { type BuiltSlot, buildSlot, lastPlateM, slotSpace, slotTakes } from './slot-port.ts'
import { tubeInside, tubePanel, tubeVolume } from './tube.ts'

interface BuiltTube {
  readonly kind: 'round'
  readonly port: RoundPort
  /** From the outer face of the panel along the centre line. */
  readonly lengthM: number
  readonly insideM: number
  readonly takenM3: number
  readonly fits: true
}
export type BuiltPort = BuiltSlot | BuiltTube

interface PortContext {
  readonly resolved: BoxTask
  readonly inside: Inside
  /** What is left of the inside before the port is set in [m³]. */
  readonly freeM3: number
  /** For finding sizes: a slot without a place is laid as near as it goes. */
  readonly lenient: boolean
}

function buildTube(resolved: BoxTask, port: RoundPort, lengthM: number | undefined): BuiltTube {
  const panelM = tubePanel(resolved, port)
  const insideM = lengthM === undefined ? tubeInside(port, panelM) : Math.max(0, lengthM - panelM)
  const takenM3 = tubeVolume(port, insideM, panelM)
  return { kind: 'round', port, lengthM: lengthM ?? insideM + panelM, insideM, takenM3, fits: true }
}

/** How its mouths open. */
export const mouthArea = (port: BoxPort, slotWidthM: number): GrowingArea =>
  port.kind === 'round' ? roundMouth(port.innerDiameterM / 2) : slotMouth(slotWidthM, port.heightM)

/** The opening with its ends as its flares leave them. */
export function openingOf(port: BoxPort, plainFactor: number, slotWidthM = 0): EndedOpening {
  const mouth = mouthArea(port, slotWidthM)
  const { flareRadiusM = 0 } = port
  const [areaM2, count] = [mouth(0), port.kind === 'round' ? (port.count ?? 1) : 1]
  const bothM = 2 * flaredEndM(endLengthM(areaM2, plainFactor) / 2, mouth, flareRadiusM)
  return { areaM2, count, endFactor: bothM / equivalentRadiusM(areaM2) }
}

/** What the air cuts off at the bends of a port. */
export const cutOff = (built: BuiltPort) => (built.kind === 'slot' ? built.run.centreLineM - built.run.acousticM : 0)

function oneLength({ lengthM, tuningHz, ...port }: BoxPort): void {
  const inside = 'insideLengthM' in port ? port.insideLengthM : undefined
  const given = [lengthM, tuningHz, inside].filter(each => each !== undefined).length
  if (given === 1) return
  throw new DesignError(given === 0 ? 'missing-input' : 'conflicting-input', {
    field: 'port.lengthM',
    detail: say('refused.give-exactly-one-of-the-length')
  })
}

function tooHigh(wantedHz: number): DesignError {
  return new DesignError('no-solution', {
    field: 'port.tuningHz',
    value: wantedHz,
    unit: 'Hz',
    detail: say('refused.this-opening-tunes-the-box-below', { wantedHz: Math.round(wantedHz) })
  })
}

interface Takes {
  readonly takenM3: number
  readonly cutOffM: number
}

/** What a port makes of a length, and the length it may not go below. */
interface Way {
  readonly leastM: number
  readonly opening: EndedOpening
  /** As near as it goes, where it finds no place. */
  readonly takes: (lengthM: number) => Takes
  readonly build: (lengthM: number, lenient: boolean) => BuiltPort
}

function wayOf({ resolved, inside }: PortContext, port: BoxPort): Way {
  const { fixed, endFactor } = resolved
  if (port.kind === 'round') {
    const panelM = tubePanel(resolved, port)
    const insideM = (lengthM: number) => Math.max(0, lengthM - panelM)
    return {
      leastM: panelM,
      opening: openingOf(port, endFactor),
      takes: lengthM => ({ takenM3: tubeVolume(port, insideM(lengthM), panelM), cutOffM: 0 }),
      build: lengthM => buildTube(resolved, port, lengthM)
    }
  }
  const space = slotSpace(inside, port, fixed.thicknessM)
  return {
    leastM: fixed.thicknessM * fixed.frontLayers,
    opening: openingOf(port, endFactor, space.widthM),
    takes: lengthM => slotTakes(space, lengthM),
    build: (lengthM, lenient) => buildSlot(space, lengthM, lenient)
  }
}

/** The length by turns: volume from length, length from volume. Contracts, as a port takes a small part of the air. */
function tunedLength({ resolved, freeM3, lenient }: PortContext, { leastM, opening, takes }: Way, wantedHz: number) {
  const given = resolved.request.displacement?.portsM3
  let last: Takes = { takenM3: 0.1 * freeM3, cutOffM: 0 }
  let lengthM = leastM
  let isShort = false
  for (let round = 0; round < 60; round++) {
    const netM3 = freeM3 - (given ?? last.takenM3)
    if (!(netM3 > 0)) {
      throw new DesignError('no-solution', { field: 'port', detail: say('refused.the-port-would-fill-the-box') })
    }
    const next = lengthForTuning(opening, wantedHz, netM3, resolved.air.soundSpeedMPerS) + last.cutOffM
    const used = Math.max(next, leastM)
    isShort = next < leastM
    const convergedNow = Math.abs(used - lengthM) < 1e-6
    lengthM = used
    last = takes(lengthM)
    if (convergedNow) break
  }
  if (isShort && !lenient) throw tooHigh(wantedHz)
  return Math.round(lengthM / resolved.sawStepM) * resolved.sawStepM
}

/** A slot ends no sooner than the board it passes. @throws DesignError `out-of-range` */
function throughTheBoard(lengthM: number, leastM: number): number {
  if (lengthM >= leastM) return lengthM
  throw new DesignError('out-of-range', {
    field: 'port.lengthM',
    value: lengthM,
    minimum: leastM,
    unit: 'm',
    detail: say('refused.a-slot-passes-the-whole-front', { leastMm: toMm(leastM, 1) })
  })
}

/** From the outer face of the panel to the inner mouth, given or from the tuning. */
function lengthOf(context: PortContext, port: NonNullable<BoxRequest['port']>, way: Way): number {
  if (port.tuningHz !== undefined) return tunedLength(context, way, port.tuningHz)
  if (port.kind === 'round') return tubeInside(port, way.leastM) + way.leastM
  return throughTheBoard(port.lengthM ?? 0, way.leastM)
}

/** Air that the port of a box takes, laid as near as it goes [m³]: what sizing asks for. */
export function portTakenM3(context: PortContext): number {
  const { port } = context.resolved.request
  if (port === undefined) return 0
  oneLength(port)
  const way = wayOf(context, port)
  return way.takes(lengthOf({ ...context, lenient: true }, port, way)).takenM3
}

/** @throws DesignError `no-solution` where a tube is shorter than its flares, or the end of a plate than its rounding */
function holdsFlares(built: BuiltPort): void {
  const flareM = built.kind === 'slot' ? built.space.flareM : (built.port.flareRadiusM ?? 0)
  const maximum = Math.max(0, built.kind === 'slot' ? lastPlateM(built) : built.lengthM / 2)
  if (flareM <= maximum + 1e-9) return
  const detail =
    built.kind === 'slot'
      ? say('refused.the-last-plate-of-the-slot', { flareMm: toMm(flareM, 1), plateMm: toMm(maximum, 1) })
      : say('refused.two-flares-are-longer-than-their', { lengthMm: toMm(built.lengthM, 1) })
  throw new DesignError('no-solution', { field: 'port.flareRadiusM', value: flareM, maximum, unit: 'm', detail })
}

/** @throws DesignError `missing-input`, `conflicting-input`, `no-solution`, `out-of-range` */
export function buildPort(context: PortContext): BuiltPort | undefined {
  const { port } = context.resolved.request
  if (port === undefined) return undefined
  oneLength(port)
  const built = portOf(context, port)
  if (!context.lenient) holdsFlares(built)
  return built
}

function portOf(context: PortContext, port: BoxPort): BuiltPort {
  const { resolved, lenient } = context
  if (port.kind === 'round' && port.tuningHz === undefined) return buildTube(resolved, port, port.lengthM)
  const way = wayOf(context, port)
  const found = way.build(lengthOf(context, port, way), lenient || port.tuningHz !== undefined)
  if (lenient || found.fits || port.tuningHz === undefined) return found
  return way.build(wantedLength(found, context, way.opening, port.tuningHz), false)
}

/** The length a slot that found no place would have needed, for the refusal. */
function wantedLength(
  found: BuiltPort,
  { freeM3, resolved }: PortContext,
  opening: EndedOpening,
  wantedHz: number
): number {
  return lengthForTuning(opening, wantedHz, freeM3 - found.takenM3, resolved.air.soundSpeedMPerS) + cutOff(found)
}
