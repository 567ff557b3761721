/** At which power each limit is reached, and what the ways to keep all of them cost at the seat. */
import type { LimitName } from '../../../contract/enclosures/words.ts'
import type { DriveWay } from '../../../contract/systems/words.ts'
import { present } from '../../../domain/present.ts'
import { mean } from '../../../numeric/mean.ts'
import { cornerFor } from '../evaluate/held-level.ts'
import { variationDefaults } from './defaults.ts'
import type { Spot, SpotDrive } from './spot.ts'
import type { SpotLimits, SpotSolver } from './spot-solver.ts'

interface CostProblem {
  readonly solver: SpotSolver
  readonly spot: Spot
  /** As it is planned. */
  readonly drive: SpotDrive
  /** Gain that amplifier and drivers bear [V]. */
  readonly usableV: number
  readonly airSpeedMPerS: number
  /** No box of these drivers is smaller. */
  readonly leastM3: number
}

interface ReachedLimit {
  readonly limit: LimitName
  readonly voltageV: number
  readonly atHz: number
}

export interface CostedWay {
  readonly way: DriveWay
  readonly spot: Spot
  readonly drive: SpotDrive
  readonly levelDb: readonly number[]
  readonly againstPlanDb: number
}

/** Each limit alone. */
function alone({
  solver: { limits },
  spot,
  airSpeedMPerS
}: CostProblem): readonly (readonly [LimitName, SpotLimits])[] {
  const { duty, coneM, heatW, ratedV, amplifierV } = limits
  const one = (limit: LimitName, of: Partial<SpotSolver['limits']>) =>
    Object.values(of).some(value => value !== undefined) ? [[limit, { drive: { duty, ...of } }] as const] : []
  return [
    ...one('cone-excursion', present({ coneM })),
    ...one('coil-heat', present({ heatW })),
    ...one('rated-voltage', present({ ratedV })),
    ...one('amplifier-voltage', present({ amplifierV })),
    ...(spot.radiators === undefined
      ? []
      : [['passive-radiator-excursion', { drive: { duty }, travels: true }] as const]),
    ...(spot.port === undefined ? [] : [['port-air-speed', { drive: { duty }, airSpeedMPerS }] as const])
  ]
}

/** @returns the first reached first; what not even four times the power reaches is left out */
export function reachedLimits(problem: CostProblem): readonly ReachedLimit[] {
  const { solver, spot, usableV } = problem
  return alone(problem)
    .map(([limit, of]) => ({ limit, ...solver.reached(spot, of) }))
    .filter(({ voltageV }) => voltageV <= variationDefaults.mostVoltage.value * usableV)
    .toSorted((a, b) => a.voltageV - b.voltageV)
}

/** Halvings of the volume, to a thousandth. */
const HALVINGS = 20

/** The largest closed box whose air holds the cone at all the power, where it is smaller than the planned one. */
function holdingM3({ solver, spot, usableV, leastM3 }: CostProblem): number | undefined {
  const holds = (netVolumeM3: number) =>
    solver.reached({ netVolumeM3 }, { drive: solver.limits }).voltageV >= usableV * 0.9999
  if (spot.port !== undefined || spot.radiators !== undefined || holds(spot.netVolumeM3) || !holds(leastM3))
    return undefined
  let [low, high] = [leastM3, spot.netVolumeM3]
  for (let step = 0; step < HALVINGS; step++) {
    const middle = Math.sqrt(low * high)
    if (holds(middle)) low = middle
    else high = middle
  }
  return low
}

/** The plan and the other ways, each keeping every limit. */
export function costedWays(problem: CostProblem): readonly CostedWay[] {
  const { solver, spot, drive, usableV } = problem
  const planned = solver.figures(spot, drive).levelDb
  const costed = (way: DriveWay, driven: SpotDrive, at: Spot = spot): CostedWay => {
    const { levelDb } = solver.figures(at, driven)
    return { way, spot: at, drive: driven, levelDb, againstPlanDb: mean(levelDb) - mean(planned) }
  }
  const allowed2 = solver.allowed2(spot)
  const unfilteredV = Math.min(usableV, Math.sqrt(Math.min(...allowed2)))
  const highPassHz = cornerFor(solver.played, allowed2, usableV ** 2)
  const smallerM3 = holdingM3(problem)
  const isFiltered = drive.highPassHz !== undefined
  return [
    costed('as-planned', drive),
    ...(isFiltered ? [costed('less-power', { voltageV: unfilteredV })] : []),
    ...(drive.voltageV < variationDefaults.allPower.value * usableV && highPassHz > 0
      ? [costed('higher-filter', { voltageV: usableV, highPassHz })]
      : []),
    ...(smallerM3 === undefined ? [] : [costed('smaller-box', { voltageV: usableV }, { netVolumeM3: smallerM3 })])
  ]
}
