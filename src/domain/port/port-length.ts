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

/** What an end factor k adds to the length: k·r, r of one port [m]. */
export function endLengthM(areaM2: number, endFactor: number): number {
  return endFactor * equivalentRadiusM(areaM2)
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

/** A port with the end factor k of both its ends together. */
export interface EndedOpening extends PortOpening {
  readonly endFactor: number
}

/** Length that gives a tuning, ends left out; negative where the ends alone are too long. */
export function lengthForTuning(
  { endFactor, ...opening }: EndedOpening,
  wantedHz: number,
  volumeM3: number,
  soundSpeedMPerS: number
): number {
  return effectiveLengthM(wantedHz, volumeM3, opening, soundSpeedMPerS) - endLengthM(opening.areaM2, endFactor)
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
