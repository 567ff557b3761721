/** The frequencies at which a design is weighed while many are compared. */

/** Below the music, where only excursion counts. */
const LOWEST_HZ = [12.5, 14, 16, 18] as const
const FROM_HZ = 20
/** Twelfths of an octave: the cone stands almost still at the tuning, and a wider grid would meet that dip by luck. */
const STEPS_PER_OCTAVE = 12
const STEPS = 29

/** 12.5 to 101 Hz. */
export const designGridHz: Float64Array = Float64Array.from([
  ...LOWEST_HZ,
  ...Array.from({ length: STEPS }, (_, step) => FROM_HZ * 2 ** (step / STEPS_PER_OCTAVE))
])
