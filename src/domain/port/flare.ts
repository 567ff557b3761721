/** What rounding the mouth of a pipe does to the length the air sees. */

/** Simpson panels over the rounding; even. */
const PANELS = 64

/**
 * Length of straight pipe that is as heavy to the air as a mouth rounded with a quarter circle.
 *
 *   ∫ (a/r(x))² dx,  r(x) = a + R − √(2Rx − x²) over x = 0 … R from the mouth inwards, r(0) = a + R, r(R) = a
 *
 * @param radiusM  a [m] > 0: of the straight pipe
 * @param flareM  R [m] ≥ 0: radius of the rounding
 * @returns [m], between 0 and R
 * @validity Low frequencies, flow following the wall.
 * @source derived: acoustic mass ρ∫dx/S(x)
 * @check  R small against a → R·(1 − 2·(1 − π/4)·R/a)
 */
export function flareLengthM(radiusM: number, flareM: number): number {
  const step = flareM / PANELS
  let sum = 0
  for (let panel = 0; panel <= PANELS; panel++) {
    const weight = panel === 0 || panel === PANELS ? 1 : panel % 2 === 1 ? 4 : 2
    // Equal angles instead of equal x: the profile is steep at the mouth.
    const angle = (Math.PI / 2) * (panel / PANELS)
    const r = radiusM + flareM * (1 - Math.sin(angle))
    sum += weight * (radiusM / r) ** 2 * Math.sin(angle)
  }
  return flareM === 0 ? 0 : ((Math.PI / 2) * step * sum) / 3
}

/**
 * What one end adds to the physical length, flare in that length.
 *
 *   Δ = k·a²/(a+R) + ∫(a/r)²dx − R
 *
 * The end correction belongs to the mouth, a + R, and counts there by the ratio of the areas. Negative for large flares.
 *
 * @param endFactor  k: of the end, over its radius
 * @source derived, see {@link flareLengthM}
 * @check  R = 0 → k·a
 */
export function flaredEndM(endFactor: number, radiusM: number, flareM: number): number {
  return (endFactor * radiusM ** 2) / (radiusM + flareM) + flareLengthM(radiusM, flareM) - flareM
}
