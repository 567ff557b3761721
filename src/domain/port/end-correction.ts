/** How much longer a port is to the air than to the rule, at each end: the simple convention and the exact figures. */
import type { EndSituation } from '../../contract/ports/words.ts'

/**
 * Convention of this service, times the radius of the circle of equal area of one port.
 *
 * @source flanged 8/(3π) ≈ 0.85, rigid piston in a plane (Rayleigh 1896, from memory); free 0.613 (Levine & Schwinger 1948, abstract read)
 */
export const conventionalEndFactor: Readonly<Record<EndSituation, number>> = { flanged: 0.85, free: 0.613 }

/** Both ends of one port by the convention: 1.463 for one end in a panel and one free. */
export const conventionalEnds = (inner: EndSituation, outer: EndSituation): number =>
  conventionalEndFactor[outer] + conventionalEndFactor[inner]

/**
 * Exact low-frequency limits for a round pipe, times its radius.
 *
 * @source flanged 0.8216 and free 0.6133: Dalmont, Nederveen & Joly, J. Sound Vib. 244(3), 2001, introduction read; the integral of
 *   Levine & Schwinger, Phys. Rev. 73, 1948, evaluates to 0.6127
 */
export const exactEndFactor: Readonly<Record<EndSituation, number>> = { flanged: 0.8216, free: 0.6133 }

/**
 * End of a rectangular opening flush in a large plane, as a piston of uniform velocity.
 *
 *   δ = {2[a²b·asinh(b/a) + ab²·asinh(a/b)] + ⅔[a³ + b³ − (a²+b²)^{3/2}]}/(2π·ab)
 *
 * @param aM  one side [m] > 0
 * @param bM  the other [m] > 0
 * @validity Low frequencies; for the circle this model lies 3 % above the exact value.
 * @source derived: double integral of 1/r over the opening
 * @check  0.05 × 0.05 m → 0.0236601 m; 0.5 × 0.05 m → 0.0561602 m
 */
export function rectangularPistonEndM(aM: number, bM: number): number {
  const inertia = 2 * (aM ** 2 * bM * Math.asinh(bM / aM) + aM * bM ** 2 * Math.asinh(aM / bM))
  const edge = (2 / 3) * (aM ** 3 + bM ** 3 - (aM ** 2 + bM ** 2) ** 1.5)
  return (inertia + edge) / (2 * Math.PI * aM * bM)
}

/** Above this share of the height the step is gone and the formula divides by nothing. */
const FULLEST_SLOT = 0.999

/**
 * Inner end of a slot as wide as the box, lying on one wall.
 *
 *   δ = (2h/π)·{(1−ν)²/(2ν)·ln[(1+ν)/(1−ν)] + ln[(1+ν)²/(4ν)]},  ν = h/H
 *
 * @param heightM  h [m] > 0
 * @param chamberHeightM  H [m] > h: the slot and the space beside it
 * @validity Plane flow, nothing facing the opening nearer than a few slot heights.
 * @source Kergomard & Garcia, J. Sound Vib. 114, 1987, from memory; confirmed by mode matching to 2e-5
 * @check  ν 0.05 → 1.66175 h; 0.1 → 1.22207 h; 0.25 → 0.649967 h; 0.5 → 0.249833 h
 */
export function fullWidthSlotEndM(heightM: number, chamberHeightM: number): number {
  const nu = Math.min(FULLEST_SLOT, heightM / chamberHeightM)
  const step = ((1 - nu) ** 2 / (2 * nu)) * Math.log((1 + nu) / (1 - nu)) + Math.log((1 + nu) ** 2 / (4 * nu))
  return ((2 * heightM) / Math.PI) * step
}

/** Against a flush end of the same shape, a free end carries this share. */
const FREE_SHARE = exactEndFactor.free / exactEndFactor.flanged

interface SlotEnd {
  readonly widthM: number
  readonly heightM: number
  readonly situation: EndSituation
  /** A long side lies along a wall, which mirrors the opening. */
  readonly alongWall: boolean
}

/**
 * End of a slot by its shape; a wall along a long side mirrors it to a slot of twice the height.
 *
 * @validity ±10 %: uniform velocity, and the free end scaled from the round pipe.
 * @source derived from {@link rectangularPistonEndM}
 */
export function slotEndM({ widthM, heightM, situation, alongWall }: SlotEnd): number {
  const flush = rectangularPistonEndM(widthM, alongWall ? 2 * heightM : heightM)
  return situation === 'flanged' ? flush : flush * FREE_SHARE
}

/** Gap to the facing wall over slot height, and the inner end correction in slot heights (own finite differences, D/h 8, H/h 9). */
export const gapEndTable = [
  [0.5, 3.39],
  [0.75, 2.8],
  [1, 2.34],
  [1.5, 1.92],
  [2, 1.68],
  [3, 1.43],
  [4, 1.31]
] as const

/** Read from the table by straight lines; beyond its ends the end values. */
export function gapEnd(gapOverHeight: number): number {
  const rows = gapEndTable
  const [first, last] = [rows[0], rows[rows.length - 1] ?? rows[0]]
  if (gapOverHeight <= first[0]) return first[1]
  if (gapOverHeight >= last[0]) return last[1]
  const index = rows.findIndex(([gap]) => gap > gapOverHeight)
  const [lowGap, lowEnd] = rows[index - 1] ?? first
  const [highGap, highEnd] = rows[index] ?? last
  return lowEnd + ((gapOverHeight - lowGap) / (highGap - lowGap)) * (highEnd - lowEnd)
}
