/** Screws that hold a glued joint until the glue has set: how many, where along it, and of which size. */
import type { Panel } from '../../../contract/boxes/panel.ts'

/** Distances from corners as a European MDF information site gives them (read), spacing common practice [m]. */
export const screwRule = { fromCornerM: 0.07, spacingM: 0.15, shortJointM: 0.2, fewest: 2, sparePercent: 10 } as const

/** By the thickness of the board they go through [m]: diameter, length and pilot [mm]. Length is 2.5 to 3 thicknesses, common practice. */
export const screwSizes = [
  { upToM: 0.0135, diameterMm: 3.5, lengthMm: 35, pilotMm: 2 },
  { upToM: 0.0165, diameterMm: 4, lengthMm: 40, pilotMm: 2.5 },
  { upToM: 0.0215, diameterMm: 4, lengthMm: 50, pilotMm: 2.5 },
  { upToM: Number.POSITIVE_INFINITY, diameterMm: 4.5, lengthMm: 60, pilotMm: 3 }
] as const
type ScrewSize = (typeof screwSizes)[number]

export const screwSizeFor = (thicknessM: number): ScrewSize =>
  screwSizes.find(({ upToM }) => thicknessM <= upToM) ?? screwSizes[3]

/** One size for a box: that of the first board that others stand against. */
export function jointScrewOf(panels: readonly Panel[]): ScrewSize {
  const [first] = panels.flatMap(({ copies = [] }) => copies.flatMap(({ marks }) => marks))
  return screwSizeFor(first?.widthM ?? 0.018)
}

/**
 * Screws along a joint of length L.
 *
 *   n = 2 for L < 200 mm, else max(2, ceil((L − 2·70 mm)/150 mm) + 1)
 *
 * @source distances from corners: a European MDF information site (read); spacing: common practice, no source
 * @check  604 mm → 5, 364 mm → 3, 150 mm → 2
 */
export function screwsAlong(lengthM: number): number {
  const { fromCornerM, spacingM, shortJointM, fewest } = screwRule
  if (lengthM < shortJointM) return fewest
  return Math.max(fewest, Math.ceil((lengthM - 2 * fromCornerM) / spacingM - 1e-9) + 1)
}

/** Round a front that comes off, so that it is pressed evenly on its gasket; common practice, no source [m]. */
export const FRONT_SPACING_M = 0.12

/** @param front  the board that comes off */
export const frontScrewCount = ({ lengthM, widthM }: Pick<Panel, 'lengthM' | 'widthM'>): number =>
  Math.ceil((2 * (lengthM + widthM)) / FRONT_SPACING_M)

/** A joint shorter than this has no screw: they would split the edge [m]. */
const SHORTEST_SCREWED_M = 0.04

/** Where they sit along the joint [m]: the outer ones 70 mm from its ends, in a short joint a quarter of it. */
export function screwPlaces(lengthM: number): readonly number[] {
  if (lengthM < SHORTEST_SCREWED_M) return []
  const { fromCornerM, shortJointM } = screwRule
  const first = lengthM < shortJointM ? lengthM / 4 : fromCornerM
  const gaps = screwsAlong(lengthM) - 1
  return Array.from({ length: gaps + 1 }, (_, i) => first + ((lengthM - 2 * first) * i) / gaps)
}
