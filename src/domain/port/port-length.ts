/** Length of a port for a tuning, and the tuning of a length. */

interface PortOpening {
  readonly count: number
  /** Of one port. */
  readonly areaM2: number
}

/** Radius of the circle of equal area [m]. */
export function equivalentRadiusM(areaM2: number): number {
  return Math.sqrt(areaM2 / Math.PI)
}

/**
 * Effective length for a tuning, ends included.
 *
 *   Leff = c²·n·S/(4π²·fB²·V)
 *
 * @param volumeM3  V [m³] > 0: net volume, port and driver taken off
 * @validity Lumped: port short against a quarter wave, its volume small against the box, see {@link waveguideTuningRatio}.
 * @source Helmholtz resonator, textbook; derived
 * @check  c 343.2, 60 L, one port of 0.1 m, 30 Hz → 0.433941 m, less 1.435 r → 0.362191 m
 */
export function effectiveLengthM(
  tuningHz: number,
  volumeM3: number,
  { count, areaM2 }: PortOpening,
  soundSpeedMPerS: number
): number {
  return (soundSpeedMPerS ** 2 * count * areaM2) / ((2 * Math.PI * tuningHz) ** 2 * volumeM3)
}

/**
 * Tuning of an effective length; inverse of {@link effectiveLengthM}.
 *
 *   fB = c/(2π)·√(n·S/(Leff·V))
 *
 * @source see {@link effectiveLengthM}
 * @check  c 343.2, 60 L, d 0.1 m, Leff 0.37175 m → 32.4124 Hz
 */
export function tuningHz(
  lengthM: number,
  volumeM3: number,
  { count, areaM2 }: PortOpening,
  soundSpeedMPerS: number
): number {
  return (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt((count * areaM2) / (lengthM * volumeM3))
}

/** Share of the corner square's centre line that the air does not see in a mitred right-angle bend of equal widths. */
const MITRE_SHORTENING = (2 * Math.LN2) / Math.PI

/**
 * What to add to the centre line for each mitred 90° bend.
 *
 *   (2·ln 2/π)·w
 *
 * @param widthM  w [m]: height of a slot in the plane of the bend, diameter of a pipe
 * @validity Low frequencies; straight legs of at least w on both sides.
 * @source corner square counts 0.559 (conformal mapping, handbooks of sheet resistance, from memory; found again by finite differences)
 * @check  40 mm → 17.65 mm
 */
export function mitreExtraM(widthM: number): number {
  return MITRE_SHORTENING * widthM
}

/**
 * First resonance of the port as a pipe open at both ends.
 *
 *   f1 = c/(2·Leff)
 *
 * @source derived: half a wavelength between the ends
 * @check  c 343.2, Leff 0.37175 m → 461.601 Hz
 */
export function pipeResonanceHz(effectiveM: number, soundSpeedMPerS: number): number {
  return soundSpeedMPerS / (2 * effectiveM)
}

/**
 * Tuning of a port as a waveguide over that of the lumped formula.
 *
 *   x·tan x = r, ratio x/√r,  r = port volume (effective) over box volume
 *
 * @param volumeRatio  r > 0
 * @source derived: open pipe on a compliance
 * @check  r 0.2 → 0.967861; 0.48 → 0.926651
 */
export function waveguideTuningRatio(volumeRatio: number): number {
  let [low, high] = [0, Math.PI / 2]
  for (let halving = 0; halving < 80; halving++) {
    const middle = (low + high) / 2
    if (middle * Math.tan(middle) < volumeRatio) low = middle
    else high = middle
  }
  return low / Math.sqrt(volumeRatio)
}
