/** What one box is and does, in the figures by which boxes are compared. */
import type { SystemFigures } from '../../../contract/systems/plan-choice.ts'
import { type PlannedKind, plannedKinds } from '../../../contract/systems/words.ts'
import { computeResponse } from '../../../domain/enclosure/answer/compute-response.ts'
import { COMPARED_HZ } from '../../../domain/enclosure/comparison/defaults.ts'
import { tuningIn } from '../../../domain/enclosure/response/tuning-in.ts'
import { present } from '../../../domain/present.ts'
import type { JoinedDrivers } from '../../load/joined-drivers.ts'
import type { BoxBrief } from '../../request/box-brief.ts'
import { airIn, type BoxPart } from './plan-box.ts'
import type { ResponsePart } from './plan-response.ts'
import { systemPrice } from './system-price.ts'

/** The standard thirds of an octave where a bass system earns its room (ISO 266, from memory). */

/** The same response at the compared frequencies; where it was asked at them it stands. */
function comparedAt({ run }: BoxBrief, response: ResponsePart & { readonly done: true }): ResponsePart {
  const { frequenciesHz } = response.request
  const same = Array.isArray(frequenciesHz) && COMPARED_HZ.every((hz, k) => frequenciesHz[k] === hz)
  return same ? response : run({ ...response.request, frequenciesHz: COMPARED_HZ }, computeResponse)
}

const isPlannedKind = (kind: string): kind is PlannedKind => plannedKinds.some(each => each === kind)

/** @returns none where box or response could not be done */
export function systemFigures(
  brief: BoxBrief,
  box: BoxPart,
  response: ResponsePart,
  { powerW }: Pick<JoinedDrivers, 'powerW'>
): SystemFigures | undefined {
  if (!box.done || !response.done) return undefined
  const compared = comparedAt(brief, response)
  if (!compared.done) return undefined
  const { outer, massKg } = box.outcome.result
  const { scalars, curves, limits } = compared.outcome.result
  const { levelDb, maximumLevelDb, seatLevelDb, maximumSeatLevelDb, groupDelayS } = curves
  const [played, most] = seatLevelDb === undefined ? [levelDb, maximumLevelDb] : [seatLevelDb, maximumSeatLevelDb]
  const { kind } = response.request.enclosure
  if (!isPlannedKind(kind)) return undefined
  return {
    kind,
    ...airIn(box),
    outerVolumeM3: outer.widthM * outer.heightM * outer.depthM,
    massKg,
    gainPowerW: powerW,
    ...present({ f3Hz: scalars.f3Hz, tuningHz: tuningIn(scalars) }),
    levelDb: played.map((level, k) => Math.min(level, most?.[k] ?? level)),
    heardAt: seatLevelDb === undefined ? 'half-space' : 'seat',
    groupDelayS: Math.max(...groupDelayS),
    ...present({ airSpeedMPerS: limits?.atDrive.portAirSpeedMPerS, price: systemPrice(brief, box.outcome.result) })
  }
}
