/** A sealed cabin below its first mode, against the half space the level is stated for. */

/** The level of a response is stated at this distance. */
export const REFERENCE_DISTANCE_M = 1

/**
 * Where the pressure in a sealed rigid cabin equals the half-space pressure at 1 m.
 *
 *   ρc²U/(ωV) = ρωU/(2πr)  ⇒  f_x = (c/2π)·√(2πr/V)
 *
 * @param volumeM3 above 0
 * @source derived: zeroth mode of a closed room against a point source in half space
 * @check  2.5 m³, 343.2 m/s → 86.594 Hz; 4 m³ → 68.4585 Hz
 */
export function pressureVesselCornerHz(volumeM3: number, soundSpeedMPerS: number): number {
  return (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt((2 * Math.PI * REFERENCE_DISTANCE_M) / volumeM3)
}

/**
 * Lowest standing wave between two rigid ends.
 *
 *   f = c/(2L)
 *
 * @param lengthM above 0
 * @source Morse & Ingard, Theoretical Acoustics, 1968 (from memory)
 * @check  2.5 m, 343.2 m/s → 68.64 Hz
 */
export function lowestModeHz(lengthM: number, soundSpeedMPerS: number): number {
  return soundSpeedMPerS / (2 * lengthM)
}

export interface PressureVessel {
  readonly cornerHz: number
  readonly cornerQ: number
  readonly leakCornerHz: number
  readonly leakQ: number
}

/**
 * Gain of the cabin over half space: 12 dB an octave below the corner, level again below the leak.
 *
 *   H = (s² + sω_x/Q_x + ω_x²)/(s² + sω_l/Q_l + ω_l²)
 *
 * @returns 20 lg|H| [dB]
 * @validity below the lowest mode of the cabin; real cars lie within about ±6 dB
 * @source ours: joins the pressure vessel to free radiation above and to leakage below, each with a damped corner
 * @check  far below the leak → 40 lg(f_x/f_l); far above the corner → 0 dB
 */
export function pressureVesselGainDb(cabin: PressureVessel, frequencyHz: number): number {
  const square = (corner: number, q: number) => {
    const x = frequencyHz / corner
    return corner ** 4 * ((1 - x * x) ** 2 + (x / q) ** 2)
  }
  return 10 * Math.log10(square(cabin.cornerHz, cabin.cornerQ) / square(cabin.leakCornerHz, cabin.leakQ))
}
