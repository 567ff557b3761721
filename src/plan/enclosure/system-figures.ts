/** What one box is and does, in the figures by which boxes are compared. */
import type { SystemFigures } from '../../contract/systems/plan-choice.ts'
import { computeResponse } from '../../domain/enclosure/answer/compute-response.ts'
import { present } from '../../domain/present.ts'
import { runPart } from '../request/part.ts'
import type { BoxPart } from './plan-box.ts'
import type { ResponsePart } from './plan-response.ts'

/** The standard thirds of an octave where a bass system earns its room (ISO 266, from memory). */
export const COMPARED_HZ = [25, 31.5, 40, 50, 63] as const

/** @returns none where box or response could not be done */
export function systemFigures(box: BoxPart, response: ResponsePart): SystemFigures | undefined {
  if (!box.done || !response.done) return undefined
  const atFew = runPart({ ...response.request, frequenciesHz: COMPARED_HZ }, computeResponse)
  if (!atFew.done) return undefined
  const { outer, volume, massKg } = box.outcome.result
  const { scalars, curves, limits } = atFew.outcome.result
  const { levelDb, maximumLevelDb, seatLevelDb, maximumSeatLevelDb, groupDelayS } = curves
  const [played, most] = seatLevelDb === undefined ? [levelDb, maximumLevelDb] : [seatLevelDb, maximumSeatLevelDb]
  const kind = response.request.enclosure.kind === 'closed' ? 'closed' : 'vented'
  return {
    kind,
    netVolumeM3: volume.netM3,
    outerVolumeM3: outer.widthM * outer.heightM * outer.depthM,
    massKg,
    ...present({ f3Hz: scalars.f3Hz, tuningHz: kind === 'closed' ? undefined : scalars.tuningHz }),
    levelDb: played.map((level, k) => Math.min(level, most?.[k] ?? level)),
    heardAt: seatLevelDb === undefined ? 'half-space' : 'seat',
    groupDelayS: Math.max(...groupDelayS),
    ...present({ airSpeedMPerS: limits?.atDrive.portAirSpeedMPerS })
  }
}
