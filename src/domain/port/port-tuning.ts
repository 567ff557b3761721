/** The lumped tuning of a port, and the length a tuning wants. */

export interface Opening {
  /** Of one port [m²]. */
  readonly areaM2: number
  readonly count: number
  /** Sum of the two end factors; each counts radii of the circle of equal area. */
  readonly endFactor: number
}

/** One end flanged, one free. */
export const FLANGED_FREE = 1.463
/** The outer end alone. */
export const FLANGED_END = 0.85

export const endLength = ({ areaM2, endFactor }: Opening) => endFactor * Math.sqrt(areaM2 / Math.PI)

/**
 *   f = c/(2π)·sqrt(n·S/(L_eff·V))     L_eff = L + k·sqrt(S/π)
 *
 * @param lengthM  L [m] ≥ 0, along the air
 * @param netM3  V [m³] > 0
 * @validity Lumped: box and port small against the wavelength.
 * @source H. Helmholtz 1860, as in any acoustics text, from memory
 */
export function tuningHz(opening: Opening, lengthM: number, netM3: number, soundSpeedMPerS: number): number {
  const { areaM2, count } = opening
  return (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt((count * areaM2) / ((lengthM + endLength(opening)) * netM3))
}

/** The length that gives a tuning; negative when the ends alone are too long. The inverse of {@link tuningHz}. */
export function lengthForTuning(opening: Opening, wantedHz: number, netM3: number, soundSpeedMPerS: number): number {
  const { areaM2, count } = opening
  const effective = (count * areaM2 * soundSpeedMPerS ** 2) / ((2 * Math.PI * wantedHz) ** 2 * netM3)
  return effective - endLength(opening)
}
