/** What rounding the mouth of a pipe does to the length the air sees. */

/** Simpson panels over the rounding; even. */
const PANELS = 64

/** Area of a mouth whose open edges stand back by so much [m²]: 0 in the straight part, R at the mouth itself. */
export type GrowingArea = (standBackM: number) => number

/** Round all about. */
export const roundMouth =
  (radiusM: number): GrowingArea =>
  standBackM =>
    Math.PI * (radiusM + standBackM) ** 2

/** Of a slot along a wall: the board across from the wall is rounded. */
export const slotMouth =
  (widthM: number, heightM: number): GrowingArea =>
  standBackM =>
    widthM * (heightM + standBackM)

/**
 * Length of straight pipe that is as heavy to the air as a mouth whose open edges are rounded with a quarter circle.
 *
 *   ∫ S(0)/S(g(x)) dx,  g(x) = R − √(2Rx − x²) over x = 0 … R from the mouth inwards, g(0) = R, g(R) = 0
 *
 * @param area  S(g) [m²] > 0
 * @param flareM  R [m] ≥ 0: radius of the rounding
 * @returns [m], between 0 and R
 * @validity Low frequencies, flow following the wall.
 * @source derived: acoustic mass ρ∫dx/S(x)
 * @check  round, R small against a → R·(1 − 2·(1 − π/4)·R/a); a slot of height h, H = h + R →
 *   h·(2H/√(H²−R²)·atan√((H+R)/(H−R)) − π/2)
 */
export function flareLengthM(area: GrowingArea, flareM: number): number {
  const step = flareM / PANELS
  let sum = 0
  for (let panel = 0; panel <= PANELS; panel++) {
    const weight = panel === 0 || panel === PANELS ? 1 : panel % 2 === 1 ? 4 : 2
    // Equal angles instead of equal x: the profile is steep at the mouth.
    const angle = (Math.PI / 2) * (panel / PANELS)
    sum += ((weight * area(0)) / area(flareM * (1 - Math.sin(angle)))) * Math.sin(angle)
  }
  return flareM === 0 ? 0 : ((Math.PI / 2) * step * sum) / 3
}

/**
 * What one end adds to the physical length, flare in that length.
 *
 *   Δ = δ·√(S(0)/S(R)) + ∫S(0)/S(g(x))dx − R
 *
 * The end correction belongs to the mouth: it grows with the root of its area, and counts by the ratio of the areas; k·a²/(a+R)
 * for a round one. Negative for large flares.
 *
 * @param plainEndM  δ [m]: what the end adds with sharp edges
 * @source derived, see {@link flareLengthM}
 * @check  R = 0 → δ
 */
export function flaredEndM(plainEndM: number, area: GrowingArea, flareM: number): number {
  return plainEndM * Math.sqrt(area(0) / area(flareM)) + flareLengthM(area, flareM) - flareM
}

/**
 * What both ends would add with sharp edges; inverse of {@link flaredEndM} for the two of them.
 *
 * @param flaredM  what both add with their flares [m]
 * @source derived, see {@link flaredEndM}
 */
export function plainEndsM(flaredM: number, area: GrowingArea, flareM: number): number {
  return (flaredM - 2 * (flareLengthM(area, flareM) - flareM)) / Math.sqrt(area(0) / area(flareM))
}

/**
 * Room that the flare of a tube takes round its straight outside.
 *
 *   π·∫ (2·r·g + g²) du,  g(u) = R − √(R² − u²) over u = 0 … U, the flare's length that counts
 *
 * @param outerRadiusM  r [m]: of the straight tube, outside
 * @param lengthM  U [m]: of the flare, from where it starts towards its mouth; 0 … R
 * @returns [m³]
 * @source derived: ring of a quarter circle turned round the axis of the tube
 * @check  U = R → π·R²·(2·r·(1 − π/4) + R·(5/3 − π/2))
 */
export function flareRingM3(outerRadiusM: number, flareM: number, lengthM: number): number {
  const [R, U] = [flareM, Math.min(lengthM, flareM)]
  if (!(U > 0)) return 0
  const root = (U * Math.sqrt(R ** 2 - U ** 2) + R ** 2 * Math.asin(U / R)) / 2
  return Math.PI * (2 * outerRadiusM * (R * U - root) + 2 * R ** 2 * U - U ** 3 / 3 - 2 * R * root)
}
