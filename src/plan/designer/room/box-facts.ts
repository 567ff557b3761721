/** What does not change while boxes for one request are compared: sizes allowed, boards, what the drivers need. */

import type { BoxRequest } from '../../../contract/boxes/box-panels.ts'
import type { Strategy } from '../../../contract/boxes/words.ts'
import { assumptions } from '../../../domain/assume.ts'
import { places } from '../../../domain/box/boot/boot-ranges.ts'
import { LEAST_INSIDE_M, mostRows, type Ranges, sizeRanges } from '../../../domain/box/boot/size-limits.ts'
import { oneDriver } from '../../../domain/box/layout/displaced.ts'
import { boardsOf } from '../../../domain/box/request/boards-of-face.ts'
import { type BoxTask, boxTask } from '../../../domain/box/request/box-task.ts'
import { USUAL_CUP_M3 } from '../../../domain/box/request/usual-cup.ts'
import { roomBehind } from '../../../domain/box/solids/clearances.ts'
import { present } from '../../../domain/present.ts'
import type { Walls } from './box-sides.ts'
import { roomDefaults } from './defaults.ts'

export interface BoxFacts extends Walls {
  readonly task: BoxTask
  /** Drivers, passive radiators and terminal. */
  readonly takenM3: number
  /** Outer face of the front to what stands behind the motor, at least; 0 where the drivers are on another face. */
  readonly motorDepthM: number
  readonly motorRadiusM: number
  readonly rows: readonly number[]
  /** As the caller wants the box to grow; each way in turn where nobody says. */
  readonly strategy?: Strategy
}

/** @param box  boards, drivers, fittings and the limits of the space */
export function boxFacts(box: BoxRequest, strategy: Strategy | undefined): BoxFacts {
  const task = boxTask(box, assumptions())
  const { thicknessM, frontLayers, recessM } = task.fixed
  const all = task.request.drivers ?? []
  const [driver] = all
  const { mountingDepthM = 0, rebateDepthM = 0, magnetDiameterM = 0, face = 'front' } = driver ?? {}
  const volumes = all.map(each => (each.count ?? 1) * (oneDriver(each, boardsOf(each, task.fixed))?.volumeM3 ?? 0))
  const most = Math.min(mostRows(task.request), roomDefaults.mostRows.value)
  return {
    task,
    boardM: thicknessM,
    recessM,
    frontM: frontLayers * thicknessM,
    leanRad: leanOf(task),
    takenM3: volumes.reduce((sum, each) => sum + each, USUAL_CUP_M3),
    motorDepthM:
      driver !== undefined && face === 'front' ? mountingDepthM + rebateDepthM + roomBehind(driver).needM : 0,
    motorRadiusM: magnetDiameterM / 2,
    rows: Array.from({ length: most }, (_, index) => index + 1),
    ...present({ strategy })
  }
}

/** Both leans of a wedge as one that takes as much of the depth; what a sloping lid takes the layout tells. */
const leanOf = ({ slopeRad = 0, fixed: { acrossRad } }: BoxTask) =>
  acrossRad === 0 ? slopeRad : Math.atan(Math.tan(slopeRad) + Math.tan(acrossRad))

/** Sizes allowed with a port in the front; of a box without one where it is absent. */
export function rangesWith(facts: BoxFacts, port?: BoxTask['request']['port']): readonly RowRanges[] {
  const { task, rows, boardM, recessM, motorDepthM, frontM } = facts
  const leanOf = ({ depth }: Ranges) =>
    Math.max(0, depth.min - recessM - boardM - Math.max(motorDepthM, frontM + LEAST_INSIDE_M))
  const asked = port === undefined ? task : { ...task, request: { ...task.request, port } }
  const most = Math.min(roomDefaults.mostRows.value, rows.length + (port?.kind === 'round' ? (port.count ?? 1) : 0))
  return Array.from({ length: most }, (_, index) => index + 1).flatMap(count =>
    places(asked, sizeRanges(asked, count)).map(ranges => ({
      rows: count,
      ranges,
      bare: ranges,
      leanM: leanOf(ranges)
    }))
  )
}

export interface RowRanges {
  readonly rows: number
  readonly ranges: Ranges
  /** The same without a port. */
  readonly bare: Ranges
  /** Depth that a leaning back takes away behind the drivers. */
  readonly leanM: number
}
