/** The rating of a fuse: next above the load and its heating, of a family that breaks the fault at this voltage. */
import { DesignError } from '../design-error.ts'
import { type FuseFamily, type FuseType, fuseFamilies, voltageClass } from './fuse-families-iso-8820.ts'
import { fuseDeratingTypeE, fuseJudgement } from './fuse-judgement.ts'

/**
 * Share of its rating a fuse carries at an ambient temperature.
 *
 * @param ambientC  of the fuse [°C], at most 125
 * @returns 1 at 20 °C and below; straight between the points
 * @throws DesignError `out-of-range` above 125 °C
 * @source data sheet of a type E 40 A fuse-link (second-hand), taken for all families
 * @check  65 °C → 0.85; 85 °C → 0.75
 */
export function fuseTemperatureFactor(ambientC: number, field: string): number {
  const points = fuseDeratingTypeE.allowedAOf40.map(([celsius, amperes]) => [celsius, amperes / 40] as const)
  const upper = points.findIndex(([celsius]) => celsius >= ambientC)
  const [above, below] = [points[upper], points[upper - 1]]
  if (above === undefined) {
    throw new DesignError('out-of-range', { field, value: ambientC, maximum: points.at(-1)?.[0] ?? 125, unit: '°C' })
  }
  if (below === undefined) return 1
  return below[1] + ((above[1] - below[1]) * (ambientC - below[0])) / (above[0] - below[0])
}

/**
 * Smallest rating that heating allows.
 *
 *   In ≥ I/(ratio·F_T)
 *
 * @check  20 A, ratio 0.75, 65 °C → 31.37 A
 */
export function thermalRating(continuousA: number, loadRatio: number, temperatureFactor: number): number {
  return continuousA / (loadRatio * temperatureFactor)
}

export interface FuseLink {
  readonly family: FuseFamily
  readonly ratingA: number
}

export interface RatingAsk {
  /** The rating is at least this [A]. */
  readonly lowestA: number
  readonly systemVoltageV: number
  /** What the source drives into a fault right behind the fuse [A]. */
  readonly prospectiveA: number
  readonly types?: readonly FuseType[]
}

/** Families allowed at a voltage. @throws DesignError `fuse-voltage` when every type asked for stops below it */
function familiesAt(
  systemVoltageV: number,
  types: readonly FuseType[] | undefined,
  field: string
): readonly FuseFamily[] {
  const needed = voltageClass(systemVoltageV)
  const wanted: readonly FuseType[] = types ?? fuseJudgement.usualTypes[needed]
  const asked = fuseFamilies.filter(family => wanted.includes(family.type))
  const able = asked.filter(family => family.voltagesV.some(voltage => voltage >= needed))
  if (able.length > 0) return able
  const highest = Math.max(...asked.flatMap(family => family.voltagesV))
  throw new DesignError('fuse-voltage', {
    field,
    value: highest,
    minimum: needed,
    unit: 'V',
    detail: `${asked.map(family => family.type).join(', ')} fuses are made for ${highest} V; a ${systemVoltageV} V system needs ${needed} V, or the arc may not go out.`
  })
}

/**
 * The next standard rating at or above a current.
 *
 * Families that break the prospective current come first (those that break most when none does), then the lower rating, then the order of preference.
 *
 * @returns the fuse-link, or undefined when no list reaches the current
 * @throws DesignError `fuse-voltage`
 * @source ISO 8820-3, -5, -6
 * @check  49.02 A → 50 A; 62 A → 70 A; 133.99 A → 150 A
 */
export function nextRating(ask: RatingAsk, field: string): FuseLink | undefined {
  const families = familiesAt(ask.systemVoltageV, ask.types, field)
  const links = families.flatMap(family =>
    family.ratingsA.filter(ratingA => ratingA >= ask.lowestA * (1 - 1e-12)).map(ratingA => ({ family, ratingA }))
  )
  const most = Math.max(...links.map(({ family }) => family.breakingA))
  const pool = links.filter(({ family }) => family.breakingA >= Math.min(ask.prospectiveA, most))
  return pool.reduce<FuseLink | undefined>(
    (best, link) => (best === undefined || link.ratingA < best.ratingA ? link : best),
    undefined
  )
}
