/** One volume and tuning weighed: the port it gets, the gain and filter it holds, and what that is worth for the goal. */
import type { PlannedKind } from '../../../contract/systems/words.ts'
import { radiatorTuning } from '../../../domain/enclosure/alignment/passive-radiator.ts'
import { present } from '../../../domain/present.ts'
import { bandPassLoad } from '../evaluate/band-pass-load.ts'
import { type BoxCurves, boxCurves, portLimit2, solveBox } from '../evaluate/box-response.ts'
import { closedQ } from '../evaluate/driver-tables.ts'
import { gainLimit2, type Held, heldLevel } from '../evaluate/held-level.ts'
import { boxDelays, unevennessDb, worstDelayS } from '../evaluate/listening.ts'
import { solveLoaded } from '../evaluate/loaded-response.ts'
import { radiatorLoad } from '../evaluate/radiator-load.ts'
import { type Goal, searchDefaults } from './defaults.ts'
import type { DesignProblem, FoundDesign, Place } from './design-problem.ts'

interface SeatSound {
  readonly held: Held
  readonly delayS: number
  readonly unevennessDb: number
}

const ringingDb = ({ delayDbPerS, delayFreeS }: Goal, delayS: number) => delayDbPerS * Math.max(0, delayS - delayFreeS)

export function scoreOf(
  goal: Goal,
  { held, ...sound }: SeatSound,
  outerM3: number,
  referenceDb: number | undefined
): number {
  if (goal.withinDb !== undefined && referenceDb !== undefined) {
    const lacking = referenceDb - goal.withinDb - held.levelDb
    return lacking > 0 ? searchDefaults.shortDb.value - lacking : -outerM3 * 1000
  }
  const room = goal.doublingDb * Math.log2(outerM3 / searchDefaults.referenceM3.value)
  return held.levelDb - room - ringingDb(goal, sound.delayS) - goal.unevennessWeight * sound.unevennessDb
}

/** @returns a function that weighs designs of the problem one after the other, in memory of its own */
export function designScale<Placed extends Place>(problem: DesignProblem<Placed>) {
  const { tables, limits, programme, goal, room, seatGainDb, leakQ, referenceDb, areaM2: given } = problem
  const { frequenciesHz } = tables
  const curves = boxCurves(frequenciesHz.length)
  const limit2 = new Float64Array(frequenciesHz.length)
  const wish = {
    ...goal,
    stepDb: problem.gainStepDb,
    seatGainDb,
    ...present({ highestV: problem.highestV })
  }

  /** A gain that needs a filter is weighed with its ringing: louder by less than that costs it is no gain. */
  const heard = () => {
    if (goal.delayDbPerS === 0) return { wished: wish, delayOf: () => 0 }
    const delays = boxDelays(frequenciesHz, curves)
    const delayOf = (highPassHz: number) => worstDelayS(delays, highPassHz)
    return { wished: { ...wish, costDb: (highPassHz: number) => ringingDb(goal, delayOf(highPassHz)) }, delayOf }
  }

  const listen = (areaM2: number, { wished, delayOf }: ReturnType<typeof heard>): SeatSound => {
    gainLimit2(curves, programme, (areaM2 * problem.airSpeedMPerS) ** 2, limit2)
    const held = heldLevel(curves, programme, limit2, wished)
    const delayS = delayOf(held.highPassHz)
    const uneven = goal.unevennessWeight === 0 ? 0 : unevennessDb(frequenciesHz, curves, held.highPassHz, seatGainDb)
    return { held, delayS, unevennessDb: uneven }
  }

  const closed = (netVolumeM3: number): FoundDesign<Placed> | undefined => {
    if (closedQ(tables, netVolumeM3) > goal.highestQtc) return undefined
    const place = room.closed(netVolumeM3)
    if (place === undefined) return undefined
    solveBox(tables, { netVolumeM3 }, limits, curves)
    const sound = listen(Infinity, heard())
    return { kind: 'closed', netVolumeM3, place, ...sound, score: scoreOf(goal, sound, place.outerM3, referenceDb) }
  }

  const vented = (netVolumeM3: number, tuningHz: number): FoundDesign<Placed> | undefined => {
    if (goal.closedOnly) return undefined
    solveBox(tables, { netVolumeM3, tuningHz, leakQ }, limits, curves)
    return ported({ kind: 'vented', netVolumeM3, tuningHz }, areaM2 => room.ported(netVolumeM3, tuningHz, areaM2))
  }

  /** What the curves hold, with the port that the goal wants for it. */
  const ported = (
    box: Pick<FoundDesign<Placed>, 'kind' | 'netVolumeM3' | 'frontVolumeM3' | 'tuningHz'>,
    placed: (areaM2: number) => Placed | undefined
  ): FoundDesign<Placed> | undefined => {
    const { areaShares, leastAreaM2 } = searchDefaults
    const needed = neededArea(frequenciesHz, curves, problem.airSpeedMPerS)
    const ears = heard()
    let best: FoundDesign<Placed> | undefined
    const areas =
      given === undefined ? areaShares.value.map(share => Math.max(leastAreaM2.value, share * needed)) : [given]
    for (const areaM2 of areas) {
      const place = placed(areaM2)
      if (place === undefined) continue
      const sound = listen(areaM2, ears)
      const score = scoreOf(goal, sound, place.outerM3, referenceDb)
      if (best !== undefined && score <= best.score) break
      best = { ...box, areaM2, place, ...sound, score }
    }
    return best
  }

  const divided = (netVolumeM3: number, tuningHz: number): FoundDesign<Placed> | undefined => {
    const stands = room.divided
    if (goal.closedOnly || stands === undefined) return undefined
    const withFront = (frontVolumeM3: number) => {
      const load = bandPassLoad(tables, { netVolumeM3, frontVolumeM3, tuningHz, leakQ }, limits)
      solveLoaded(tables, load, limits, curves)
      return ported({ kind: 'band-pass-4', netVolumeM3, frontVolumeM3, tuningHz }, areaM2 =>
        stands(netVolumeM3, frontVolumeM3, tuningHz, areaM2)
      )
    }
    return problem.frontVolumeM3 === undefined ? bestFront(netVolumeM3, withFront) : withFront(problem.frontVolumeM3)
  }

  const radiated = (netVolumeM3: number, tuningHz: number): FoundDesign<Placed> | undefined => {
    if (goal.closedOnly) return undefined
    let best: FoundDesign<Placed> | undefined
    for (const { unit, count, isFlat, stands } of problem.radiators ?? []) {
      const { areaM2, complianceMPerN } = unit
      const tuned = radiatorTuning(tuningHz, netVolumeM3, { count, areaM2 }, complianceMPerN, tables.air.stiffnessPa)
      const addedKg = tuned.massKg - unit.massKg
      const place = addedKg < 0 || addedKg > unit.mostAddedKg ? undefined : stands(netVolumeM3)
      if (place === undefined) continue
      solveLoaded(
        tables,
        radiatorLoad(tables.air, { netVolumeM3, tuningHz, leakQ, unit, count, isFlat }, limits),
        limits,
        curves
      )
      const sound = listen(Infinity, heard())
      const score = scoreOf(goal, sound, place.outerM3, referenceDb)
      if (best !== undefined && score <= best.score) continue
      best = { kind: 'passive-radiator', netVolumeM3, tuningHz, place, ...sound, score }
    }
    return best
  }

  return { closed, vented, 'passive-radiator': radiated, 'band-pass-4': divided } satisfies Record<PlannedKind, unknown>
}

/** The front chamber that the goal wants before a closed one: the usual ratios, then nearer to the best. */
function bestFront<Placed extends Place>(
  netVolumeM3: number,
  withFront: (frontVolumeM3: number) => FoundDesign<Placed> | undefined
): FoundDesign<Placed> | undefined {
  const { frontRatios, frontSteps } = searchDefaults
  let best: FoundDesign<Placed> | undefined
  const weigh = (frontVolumeM3: number) => {
    const next = withFront(frontVolumeM3)
    if (next !== undefined && (best === undefined || next.score > best.score)) best = next
  }
  for (const ratio of frontRatios.value) weigh(ratio * netVolumeM3)
  for (const step of frontSteps.value) {
    const middle = best?.frontVolumeM3
    if (middle === undefined) return undefined
    weigh(middle / step)
    weigh(middle * step)
  }
  return best
}

/** The area from which on something else limits first, 20 to 90 Hz. */
function neededArea(frequenciesHz: Float64Array, curves: BoxCurves, airSpeedMPerS: number): number {
  const { portFromHz, portToHz } = searchDefaults
  let needed2 = 0
  for (let k = 0; k < frequenciesHz.length; k++) {
    const frequency = frequenciesHz[k] as number
    if (frequency < portFromHz.value || frequency > portToHz.value) continue
    const area2 = (curves.other2[k] as number) / (portLimit2(curves.port2[k] as number) * airSpeedMPerS ** 2)
    if (area2 > needed2) needed2 = area2
  }
  return Math.sqrt(needed2)
}
