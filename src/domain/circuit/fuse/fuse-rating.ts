/** The rating of a fuse: next above the load and its heating, of a family that breaks the fault at this voltage. */

import type { CircuitFuse } from '../../../contract/supply/supply-circuit.ts'
import type { FuseType } from '../../../contract/supply/words.ts'
import { DesignError } from '../../design-error.ts'
import { toDigits } from '../../digits.ts'
import { say } from '../../say.ts'
import { type Breaking, breakingCurrent } from './battery-source.ts'
import { fuseDeratingTypeE } from './data-sheets.ts'
import { fuseDefaults } from './defaults.ts'
import { highBreakingFamilies } from './fuse-families-high-breaking.ts'
import { fuseFamilies, fuseFamily, voltageClass } from './fuse-families-iso-8820.ts'
import type { FuseFamily } from './fuse-family.ts'

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

interface RatingAsk {
  /** The rating is at least this [A]. */
  readonly lowestA: number
  readonly systemVoltageV: number
  /** What the fuse may have to break; left out, every family does. */
  readonly breaking?: Breaking
  readonly types?: readonly FuseType[]
}

/** A fuse of a known family or rating, against the most volts that may stand across it. @throws DesignError `fuse-voltage` */
export function requireFuseStands(
  { type, ratedVoltageV }: Partial<Pick<CircuitFuse, 'type' | 'ratedVoltageV'>>,
  highestV: number,
  at: string
): void {
  const stands = ratedVoltageV ?? Math.max(0, ...(fuseFamily(type)?.voltagesV ?? []))
  if (stands === 0 || stands >= highestV) return
  const field = `${at}.${ratedVoltageV === undefined ? 'type' : 'ratedVoltageV'}`
  const able = fuseFamilies.filter(family => family.voltagesV.some(voltage => voltage >= highestV))
  const types = able.map(family => family.type).join(', ')
  throw new DesignError('fuse-voltage', {
    field,
    value: stands,
    minimum: highestV,
    unit: 'V',
    detail: say('refused.fuse-for-too-few-volts', { standsV: stands, highestV: toDigits(highestV, 3), types })
  })
}

/** Families considered where the caller names none. */
export const usualFuseTypes = (voltageV: 32 | 58): readonly FuseType[] =>
  (voltageV === 58 ? fuseDefaults.usualTypes58V : fuseDefaults.usualTypes32V).value

/** Families allowed at a voltage. @throws DesignError `fuse-voltage` when every type asked for stops below it */
function familiesAt(
  systemVoltageV: number,
  types: readonly FuseType[] | undefined,
  field: string
): readonly FuseFamily[] {
  const needed = voltageClass(systemVoltageV)
  const wanted: readonly FuseType[] = types ?? usualFuseTypes(needed)
  const asked = fuseFamilies.filter(family => wanted.includes(family.type))
  const able = asked.filter(family => family.voltagesV.some(voltage => voltage >= needed))
  if (able.length > 0) return able
  const highest = Math.max(...asked.flatMap(family => family.voltagesV))
  throw new DesignError('fuse-voltage', {
    field,
    value: highest,
    minimum: needed,
    unit: 'V',
    detail: say('refused.fuses-are-made-for-v-a', {
      types: asked.map(family => family.type).join(', '),
      highestV: highest,
      systemVoltageV,
      neededV: needed
    })
  })
}

/**
 * The next standard rating at or above a current.
 *
 * A fuse-link that breaks the fault behind itself comes first where its rating is at most twice the next one; else the
 * next rating, of the family that breaks most; for a described battery a family of high breaking capacity comes before that. A fuse far above its load would take its small cable along.
 *
 * @returns the fuse-link, or undefined when no list reaches the current
 * @throws DesignError `fuse-voltage`
 * @source ISO 8820-3, -5, -6; UL 248-15, IEC 60269-2 (from memory)
 * @check  48.31 A → 50 A; 62 A → 70 A; 133.99 A → 150 A
 */
export function nextRating(ask: RatingAsk, field: string): FuseLink | undefined {
  const families = familiesAt(ask.systemVoltageV, ask.types, field)
  const links = families.flatMap(family =>
    family.ratingsA.filter(ratingA => ratingA >= ask.lowestA * (1 - 1e-12)).map(ratingA => ({ family, ratingA }))
  )
  const inOrder = links.toSorted((one, other) => one.ratingA - other.ratingA)
  const [next] = inOrder
  if (next === undefined) return undefined
  const able = inOrder.find(link => breaks(link, ask.breaking))
  if (able !== undefined && able.ratingA <= next.ratingA * LARGEST_STEP) return able
  const strong = ask.types === undefined ? strongLink(ask, next.ratingA) : undefined
  if (strong !== undefined) return strong
  return inOrder
    .filter(({ ratingA }) => ratingA === next.ratingA)
    .reduce((best, link) => (link.family.breakingA > best.family.breakingA ? link : best))
}

/** Of a family that breaks more, for a battery that is known to drive so much; the strength of one nobody described is a guess. */
function strongLink({ lowestA, systemVoltageV, breaking }: RatingAsk, nextA: number): FuseLink | undefined {
  if (breaking?.described !== true) return undefined
  const needed = voltageClass(systemVoltageV)
  return highBreakingFamilies
    .filter(({ voltagesV }) => voltagesV.some(voltage => voltage >= needed))
    .flatMap((family): readonly FuseLink[] => {
      const ratingA = family.ratingsA.find(each => each >= lowestA * (1 - 1e-12) && each <= nextA * LARGEST_STEP)
      return ratingA === undefined ? [] : [{ family, ratingA }]
    })
    .find(link => breaks(link, breaking))
}

/** How far above the next rating a fuse-link may lie because it breaks more; our choice. */
const LARGEST_STEP = 2

/** Whether a fuse-link breaks a dead short right behind it. */
function breaks({ family, ratingA }: FuseLink, breaking: Breaking | undefined): boolean {
  return breaking === undefined || breakingCurrent(breaking, ratingA) <= family.breakingA
}

/** Whether a family left out of the request would break the fault with this rating or the next of its own list. */
export function familyThatBreaks(breaking: Breaking, ratingA: number, systemVoltageV: number): FuseFamily | undefined {
  const needed = voltageClass(systemVoltageV)
  return fuseFamilies.find(family => {
    const rating = family.ratingsA.find(candidate => candidate >= ratingA && candidate <= ratingA * LARGEST_STEP)
    const made = family.voltagesV.some(voltage => voltage >= needed)
    return made && rating !== undefined && breaks({ family, ratingA: rating }, breaking)
  })
}
