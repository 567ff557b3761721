/** A port of given length, or of the length that a tuning wants with the air that is left. */
import { DesignError } from '../../design-error.ts'
import { type EndedOpening, lengthForTuning } from '../../port/port-length.ts'
import type { BoxPort, RoundPort } from '../request/box-request.ts'
import type { BoxTask } from '../request/box-task.ts'
import type { Inside } from '../shell/face.ts'
import { type BuiltSlot, buildSlot, slotSpace } from './slot-port.ts'
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

/** Lengths are built to a millimetre. */
const LENGTH_STEP_M = 1e-3

function buildTube(resolved: BoxTask, port: RoundPort, lengthM: number | undefined): BuiltTube {
  const panelM = tubePanel(resolved, port)
  const insideM = lengthM === undefined ? tubeInside(port, panelM) : Math.max(0, lengthM - panelM)
  const takenM3 = tubeVolume(port, insideM)
  return { kind: 'round', port, lengthM: lengthM ?? insideM + panelM, insideM, takenM3, fits: true }
}

export function openingOf(port: BoxPort, endFactor: number, widthM: number): EndedOpening {
  return port.kind === 'round'
    ? { areaM2: (Math.PI / 4) * port.innerDiameterM ** 2, count: port.count ?? 1, endFactor }
    : { areaM2: widthM * port.heightM, count: 1, endFactor }
}

/** What the air cuts off at the bends of a port. */
export const cutOff = (built: BuiltPort) => (built.kind === 'slot' ? built.run.centreLineM - built.run.acousticM : 0)

function oneLength({ lengthM, tuningHz, ...port }: BoxPort): void {
  const inside = 'insideLengthM' in port ? port.insideLengthM : undefined
  const given = [lengthM, tuningHz, inside].filter(each => each !== undefined).length
  if (given === 1) return
  throw new DesignError(given === 0 ? 'missing-input' : 'conflicting-input', {
    field: 'port.lengthM',
    detail: 'Give exactly one of the length of the port, its part inside, and its tuning.'
  })
}

function tooHigh(wantedHz: number): DesignError {
  return new DesignError('no-solution', {
    field: 'port.tuningHz',
    value: wantedHz,
    unit: 'Hz',
    detail: `This opening tunes the box below ${Math.round(wantedHz)} Hz even without a tube: the board alone is long enough. Take more area or a lower tuning.`
  })
}

/** The built length by turns: volume from length, length from volume. Contracts, as a port takes a small part of the air. */
function forTuning(
  context: PortContext,
  port: BoxPort,
  wantedHz: number,
  build: (lengthM: number) => BuiltPort,
  opening: EndedOpening
): BuiltPort {
  const { resolved, freeM3, lenient } = context
  const leastM =
    port.kind === 'round' ? tubePanel(resolved, port) : resolved.fixed.thicknessM * resolved.fixed.frontLayers
  const given = resolved.request.displacement?.portsM3
  let built: BuiltPort | undefined
  let lengthM = leastM
  let isShort = false
  for (let round = 0; round < 60; round++) {
    const netM3 = freeM3 - (given ?? built?.takenM3 ?? 0.1 * freeM3)
    if (!(netM3 > 0)) {
      throw new DesignError('no-solution', { field: 'port', detail: 'The port would fill the box.' })
    }
    const next =
      lengthForTuning(opening, wantedHz, netM3, resolved.air.soundSpeedMPerS) +
      (built === undefined ? 0 : cutOff(built))
    const used = Math.max(next, leastM)
    isShort = next < leastM
    const convergedNow = Math.abs(used - lengthM) < 1e-6
    lengthM = used
    built = build(lengthM)
    if (convergedNow) break
  }
  if (isShort && !lenient) throw tooHigh(wantedHz)
  return build(Math.round(lengthM / LENGTH_STEP_M) * LENGTH_STEP_M)
}

/** @throws DesignError `missing-input`, `conflicting-input`, `no-solution`, `out-of-range` */
export function buildPort(context: PortContext): BuiltPort | undefined {
  const { resolved, inside, lenient } = context
  const { port } = resolved.request
  if (port === undefined) return undefined
  oneLength(port)
  if (port.kind === 'round') {
    const build = (lengthM: number | undefined) => buildTube(resolved, port, lengthM)
    return port.tuningHz === undefined
      ? build(port.lengthM)
      : forTuning(context, port, port.tuningHz, build, openingOf(port, resolved.endFactor, 0))
  }
  const space = slotSpace(inside, port, resolved.fixed.thicknessM)
  const build = (lengthM: number, mild: boolean) => buildSlot(space, lengthM, mild)
  if (port.tuningHz === undefined) return build(port.lengthM ?? 0, lenient)
  const found = forTuning(
    context,
    port,
    port.tuningHz,
    length => build(length, true),
    openingOf(port, resolved.endFactor, space.widthM)
  )
  return lenient || found.fits
    ? found
    : build(found.kind === 'slot' ? wantedLength(found, context, port.tuningHz, space.widthM) : 0, false)
}

/** The length a slot that found no place would have needed, for the refusal. */
function wantedLength(found: BuiltSlot, { freeM3, resolved }: PortContext, wantedHz: number, widthM: number): number {
  const { port } = resolved.request
  if (port?.kind !== 'slot') return 0
  const opening = openingOf(port, resolved.endFactor, widthM)
  return lengthForTuning(opening, wantedHz, freeM3 - found.takenM3, resolved.air.soundSpeedMPerS) + cutOff(found)
}
