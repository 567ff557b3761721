/** What bends and mouths add to or take from the length of a port, for the box the port is built into. */

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

/**
 * End correction of a slot that lies on a wall and opens into a higher space, in slot heights.
 *
 *   Δ/h = (2/π)·(ln((1 − A²)/(4A)) + ½·(A + 1/A)·ln((1 + A)/(1 − A)))     A = h/H
 *
 * @param share  A, above 0 and below 1
 * @validity Two-dimensional: the slot is as wide as the box. Long waves.
 * @source step in a channel, form as in N. Marcuvitz, Waveguide Handbook (1951), from memory; found again by finite differences
 * @check  A = 1/4 → 0.649967; A = 1/10 → 1.22207
 */
export function wallSlotEnd(share: number): number {
  const a = Math.min(0.999, Math.max(1e-6, share))
  return (2 / Math.PI) * (Math.log((1 - a * a) / (4 * a)) + 0.5 * (a + 1 / a) * Math.log((1 + a) / (1 - a)))
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
