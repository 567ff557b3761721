/** What mitred bends take from the length of a port. */

/**
 * Length that a mitred bend takes away from its centre line, in channel heights: the air cuts the corner.
 *
 *   Δ/h = 2·J(θ/π)/π − tan(θ/2)     J(a) = Σ 2a/((2k + 1 − a)(2k + 1)), k = 0, 1, 2 …
 *
 * @param turnRad  angle by which the flow turns, 0 … below π
 * @validity Even height, sharp mitre, straight legs of at least one height, long waves.
 * @source derived: potential flow, conformal map of a half plane on the bent channel
 * @check  90° → 0.4412712 (a square corner counts 1 − 2·ln2/π = 0.5587288 of its height)
 */
export function mitreShortening(turnRad: number): number {
  const a = Math.abs(turnRad) / Math.PI
  let sum = 0
  const terms = 400
  for (let k = 0; k < terms; k++) sum += (2 * a) / ((2 * k + 1 - a) * (2 * k + 1))
  // The rest of the series, as an integral from the middle of the last step.
  sum += a / (2 * terms)
  return (2 * sum) / Math.PI - Math.tan(Math.abs(turnRad) / 2)
}

/** Of its height that a bend of 90° counts whose outer corner is filled to a quarter round about the inner one. */
const ROUNDED_BEND = 0.58605

/**
 * The same of a bend of 90° whose outer corner is rounded about the inner one, in channel heights.
 *
 *   Δ/h = 1 − 0.58605
 *
 * @validity Even height, sharp inner corner, outer radius of one height, straight legs of at least one height, long waves.
 * @source derived: own finite elements for potential flow, 48 elements across and extrapolated; they give the square corner, known
 * in closed form, to 1e-5
 * @check  90° → 0.41395, below the 0.4412712 of a square corner: less room, less to cut off
 */
export const roundedShortening = (): number => 1 - ROUNDED_BEND

/**
 * What fills the outer corner of such a bend, in the square of the channel height.
 *
 *   1 − π/4
 *
 * @source derived: a square less its quarter disc
 * @check  40 mm → 343.4 mm²
 */
export const cornerFillM2 = (heightM: number): number => (1 - Math.PI / 4) * heightM ** 2

/** The case of 90° in closed form. */
const RIGHT_ANGLE_SHORTENING = (2 * Math.LN2) / Math.PI

/**
 * What to add to the centre line for each mitred 90° bend.
 *
 *   (2·ln 2/π)·w
 *
 * @param widthM  w [m]: height of a slot in the plane of the bend, diameter of a pipe
 * @validity Low frequencies; straight legs of at least w on both sides.
 * @source as {@link mitreShortening}; corner square counts 0.559 in handbooks of sheet resistance (from memory)
 * @check  40 mm → 17.65 mm
 */
export function mitreExtraM(widthM: number): number {
  return RIGHT_ANGLE_SHORTENING * widthM
}
