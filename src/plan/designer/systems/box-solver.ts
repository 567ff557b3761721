/** A box as a plan sets it up, in closed form: full gain, the high-pass its cone needs, and the figures a search compares. */
import type { ForeseenFigures } from '../../../contract/systems/design-system.ts'
import { isFlatFace, type SearchedKind } from '../../../contract/systems/words.ts'
import { present } from '../../../domain/present.ts'
import { type BoxCurves, boxCurves, type DriveLimits, portLimit2, solveBox } from '../evaluate/box-response.ts'
import { risesToHz } from '../evaluate/crossing.ts'
import { airLimit2, cornerFor, gainLimit2, highPass2, leastGain, type Programme } from '../evaluate/held-level.ts'
import { solveLoaded } from '../evaluate/loaded-response.ts'
import { radiatorLoad } from '../evaluate/radiator-load.ts'
import type { PlacedBox } from '../room/box-room.ts'
import type { DesignProblem, RadiatorWay } from '../search/design-problem.ts'

export type BoxProblem = Omit<DesignProblem<PlacedBox>, 'goal'>

/** Without the excursion where nobody says what the cone may do. */
export type BoxFigures = Pick<ForeseenFigures, 'f3Hz' | 'levelDb' | 'airSpeedMPerS'> &
  Partial<Pick<ForeseenFigures, 'excursionOfXmax'>>

interface Box {
  readonly netVolumeM3: number
  readonly tuningHz?: number
  readonly areaM2?: number
  /** Where it was placed, with how many radiators. */
  readonly place?: Pick<PlacedBox, 'radiators'>
}

interface SolvedNode {
  readonly f3Hz: number
  readonly level2: number
  readonly bears2: number
}

export interface BoxSolver {
  readonly node: (box: Box, kind: SearchedKind) => SolvedNode | undefined
  /** `driveV`: to which the gain is set. */
  readonly box: (box: Box, limits: DriveLimits, driveV: number) => BoxFigures
}

/** Between neighbours of the grid, along logarithms of both. */
function between(frequenciesHz: Float64Array, values: Float64Array, frequencyHz: number): number {
  const above = Math.max(
    1,
    frequenciesHz.findIndex(each => each >= frequencyHz)
  )
  const [from, to] = [frequenciesHz[above - 1] as number, frequenciesHz[above] as number]
  const [low, high] = [values[above - 1] as number, values[above] as number]
  return low * (high / low) ** (Math.log(frequencyHz / from) / Math.log(to / from))
}

/** What the low-pass leaves: a plan sets the high-pass for any note, however rare it is at the bottom of music. */
function withoutMusic(weight2: Float64Array): Float64Array {
  const left = weight2.slice()
  for (let k = left.length - 2; k >= 0; k--) left[k] = Math.max(left[k] as number, left[k + 1] as number)
  return left
}

interface Drive {
  /** Corner that the cone needs. */
  readonly cornerHz: number
  /** Square of excursion over Xmax, and of the air speed times the area [m³/s]. */
  readonly cone2: number
  readonly flow2: number
}

/**
 * @param cone  curves with no limit but the cone's, and the travel of radiators where the corner is asked for
 * @param known  corner that is set anyway
 */
function driven(played: Programme, cone: BoxCurves, drive2: number, limit2: Float64Array, known?: number): Drive {
  gainLimit2(cone, played, Infinity, limit2)
  const cornerHz = known ?? cornerFor(played, limit2, drive2)
  const least2 = () => leastGain(played.frequenciesHz, limit2, cornerHz).gain2
  const cone2 = drive2 / least2()
  airLimit2(cone, played, 1, limit2)
  return { cornerHz, cone2, flow2: drive2 / least2() }
}

/**
 * @param problem  of any amplifier
 * @param plateau2  square of the level of the plateau for one volt
 * @param levelHz  where the level is compared, inside the grid
 */
export function boxSolver(problem: BoxProblem, plateau2: number, levelHz: number): BoxSolver {
  const { tables, airSpeedMPerS, leakQ } = problem
  const { frequenciesHz } = tables
  const played = { ...problem.programme, weight2: withoutMusic(problem.programme.weight2) }
  const curves = boxCurves(frequenciesHz.length)
  const limit2 = new Float64Array(frequenciesHz.length)
  const atLevel = (values: Float64Array) => between(frequenciesHz, values, levelHz)
  const lossy = ({ netVolumeM3, tuningHz }: Box) =>
    tuningHz === undefined ? { netVolumeM3 } : { netVolumeM3, tuningHz, leakQ }
  const weightThere = atLevel(played.weight2)
  const { amplifierV: _, ...parts } = problem.limits
  const coneOnly = { duty: parts.duty, ...present({ coneM: parts.coneM }) }

  const wayOf = (placed: PlacedBox['radiators']) =>
    placed &&
    problem.radiators?.find(({ count, isFlat }) => count === placed.count && isFlat === isFlatFace(placed.face))

  /** With radiators as one of the ways to set them in, their travel a limit or not. */
  const solve = (box: Box, limits: DriveLimits, way?: RadiatorWay<PlacedBox>, travels = true): void => {
    const { netVolumeM3, tuningHz } = box
    if (way === undefined || tuningHz === undefined) {
      solveBox(tables, lossy(box), limits, curves)
      return
    }
    const { unit, count, isFlat } = way
    const held = travels ? unit : { ...unit, travelM: Infinity }
    const set = { netVolumeM3, tuningHz, leakQ, count, isFlat, unit: held }
    solveLoaded(tables, radiatorLoad(tables.air, set, limits), limits, curves)
  }

  const solvedNode = (box: Box, way?: RadiatorWay<PlacedBox>): SolvedNode | undefined => {
    solve(box, parts, way)
    const f3Hz = risesToHz(frequenciesHz, curves.level2, plateau2 / 2)
    if (f3Hz === undefined) return undefined
    return { f3Hz, level2: atLevel(curves.level2) * weightThere, bears2: atLevel(curves.other2) / weightThere }
  }

  const node: BoxSolver['node'] = (box, kind) => {
    if (kind !== 'passive-radiator') return solvedNode(box)
    const nodes = (problem.radiators ?? []).flatMap(way => solvedNode(box, way) ?? [])
    const best = (of: (each: SolvedNode) => number) => Math.max(...nodes.map(of))
    if (nodes.length === 0) return undefined
    return { f3Hz: -best(({ f3Hz }) => -f3Hz), level2: best(each => each.level2), bears2: best(each => each.bears2) }
  }

  const figuresAt: BoxSolver['box'] = (box, limits, driveV) => {
    const way = wayOf(box.place?.radiators)
    solve(box, coneOnly, way)
    const { cornerHz } = driven(played, curves, driveV ** 2, limit2)
    solve(box, coneOnly, way, false)
    const { cone2, flow2 } = driven(played, curves, driveV ** 2, limit2, cornerHz)
    const f3Hz = risesToHz(frequenciesHz, curves.level2, plateau2 / 2) ?? Number.POSITIVE_INFINITY
    solve(box, limits, way)
    const { areaM2 } = box
    const port2 = areaM2 === undefined ? Infinity : (areaM2 * airSpeedMPerS) ** 2 * portLimit2(atLevel(curves.port2))
    const played2 = driveV ** 2 * weightThere * highPass2(cornerHz, levelHz)
    return {
      f3Hz,
      levelDb: 10 * Math.log10(atLevel(curves.level2) * Math.min(played2, port2, atLevel(curves.other2))),
      ...present({
        excursionOfXmax: limits.coneM === undefined ? undefined : Math.sqrt(cone2),
        airSpeedMPerS: areaM2 === undefined ? undefined : Math.sqrt(flow2) / areaM2
      })
    }
  }
  return { node, box: figuresAt }
}
