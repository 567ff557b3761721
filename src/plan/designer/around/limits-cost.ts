/** At which power each limit is reached, and what the ways to keep all of them cost at the seat. */
import type { LimitName } from '../../../contract/enclosures/words.ts'
import type { DriveWay } from '../../../contract/systems/words.ts'
import { present } from '../../../domain/present.ts'
import { mean } from '../../../numeric/mean.ts'
import { cornerFor } from '../evaluate/held-level.ts'
import { aroundDefaults } from './defaults.ts'
import type { Spot, SpotDrive } from './spot.ts'
import type { EarLimits, SpotEar } from './spot-ear.ts'

interface CostProblem {
  readonly ear: SpotEar
  readonly spot: Spot
  /** As it is planned. */
  readonly drive: SpotDrive
  /** Gain that amplifier and drivers bear [V]. */
  readonly borneV: number
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
function alone({ ear: { limits }, spot, airSpeedMPerS }: CostProblem): readonly (readonly [LimitName, EarLimits])[] {
  const { duty, coneM, heatW, ratedV, amplifierV } = limits
  const one = (limit: LimitName, of: Partial<SpotEar['limits']>) =>
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
  const { ear, spot, borneV } = problem
  return alone(problem)
    .map(([limit, of]) => ({ limit, ...ear.reached(spot, of) }))
    .filter(({ voltageV }) => voltageV <= aroundDefaults.mostVoltage.value * borneV)
    .toSorted((a, b) => a.voltageV - b.voltageV)
}

/** Halvings of the volume, to a thousandth. */
const HALVINGS = 20

/** The largest closed box whose air holds the cone at all the power, where it is smaller than the planned one. */
function holdingM3({ ear, spot, borneV, leastM3 }: CostProblem): number | undefined {
  const holds = (netVolumeM3: number) => ear.reached({ netVolumeM3 }, { drive: ear.limits }).voltageV >= borneV * 0.9999
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
  const { ear, spot, drive, borneV } = problem
  const planned = ear.hear(spot, drive).levelDb
  const costed = (way: DriveWay, driven: SpotDrive, at: Spot = spot): CostedWay => {
    const { levelDb } = ear.hear(at, driven)
    return { way, spot: at, drive: driven, levelDb, againstPlanDb: mean(levelDb) - mean(planned) }
  }
  const allowed2 = ear.allowed2(spot)
  const unfilteredV = Math.min(borneV, Math.sqrt(Math.min(...allowed2)))
  const highPassHz = cornerFor(ear.played, allowed2, borneV ** 2)
  const smallerM3 = holdingM3(problem)
  const isFiltered = drive.highPassHz !== undefined
  return [
    costed('as-planned', drive),
    ...(isFiltered ? [costed('less-power', { voltageV: unfilteredV })] : []),
    ...(drive.voltageV < aroundDefaults.allPower.value * borneV && highPassHz > 0
      ? [costed('higher-filter', { voltageV: borneV, highPassHz })]
      : []),
    ...(smallerM3 === undefined ? [] : [costed('smaller-box', { voltageV: borneV }, { netVolumeM3: smallerM3 })])
  ]
}
