/** What a box cannot pass: the bound by which most of the grid is never weighed. */
import { present } from '../../../domain/present.ts'
import { boxCurves, solveBox } from '../evaluate/box-response.ts'
import { closedQ } from '../evaluate/driver-tables.ts'
import { gainLimit2, heldLevel } from '../evaluate/held-level.ts'
import { boxDelays, worstDelayS } from '../evaluate/listening.ts'
import { solveLoaded } from '../evaluate/loaded-response.ts'
import { radiatorLoad } from '../evaluate/radiator-load.ts'
import type { DesignProblem, Place } from './design-problem.ts'
import { scoreOf } from './weigh-design.ts'

interface Bound {
  readonly most: number
  readonly leastOuterM3: number
}

/**
 * Of a volume, closed or tuned: the gain of the problem and an amplifier that bears it, a port that no air is too fast in, the
 * room of the closed box or of one with radiators, the ringing without a filter. Whatever a real amplifier and port do can only be less.
 */
export function mostOf<Placed extends Place>(
  problem: DesignProblem<Placed>
): (netVolumeM3: number, tuningHz?: number) => Bound | undefined {
  const { tables, programme, goal, room, seatGainDb, leakQ, gainStepDb } = problem
  const { amplifierV: _, ...limits } = problem.limits
  const wish = { ...goal, stepDb: gainStepDb, seatGainDb, ...present({ highestV: problem.highestV }) }
  const { frequenciesHz } = tables
  const curves = boxCurves(frequenciesHz.length)
  const limit2 = new Float64Array(frequenciesHz.length)
  const bound = (outerM3: number): Bound => {
    gainLimit2(curves, programme, Infinity, limit2)
    const held = heldLevel(curves, programme, limit2, wish)
    const delayS = goal.delayDbPerS === 0 ? 0 : worstDelayS(boxDelays(frequenciesHz, curves), 0)
    const most = scoreOf(goal, { held, delayS, unevennessDb: 0 }, outerM3, -Infinity)
    return { most, leastOuterM3: outerM3 }
  }
  const radiated = (netVolumeM3: number, tuningHz: number): Bound | undefined => {
    const bounds = (problem.radiators ?? []).flatMap(({ unit, count, isFlat, stands }) => {
      const place = stands(netVolumeM3)
      if (place === undefined) return []
      solveLoaded(
        tables,
        radiatorLoad(tables.air, { netVolumeM3, tuningHz, leakQ, unit, count, isFlat }, limits),
        limits,
        curves
      )
      return [bound(place.outerM3)]
    })
    if (bounds.length === 0) return undefined
    return {
      most: Math.max(...bounds.map(({ most }) => most)),
      leastOuterM3: Math.min(...bounds.map(({ leastOuterM3 }) => leastOuterM3))
    }
  }
  return (netVolumeM3, tuningHz) => {
    const isClosed = tuningHz === undefined
    if (isClosed ? closedQ(tables, netVolumeM3) > goal.highestQtc : goal.closedOnly) return undefined
    if (problem.kind === 'passive-radiator') return isClosed ? undefined : radiated(netVolumeM3, tuningHz)
    const place = room.closed(netVolumeM3)
    if (place === undefined) return undefined
    solveBox(tables, isClosed ? { netVolumeM3 } : { netVolumeM3, tuningHz, leakQ }, limits, curves)
    return bound(place.outerM3)
  }
}
