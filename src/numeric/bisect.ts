/** The root of a function between two points where its sign differs. */

/** Enough halvings to reach the last bit of any bracket a design can have. */
const HALVINGS = 200

/**
 * Bisection to the last representable place.
 *
 * @param f  continuous, of opposite sign (or zero) at low and high
 * @returns a point of [low, high] where f changes sign
 * @validity The caller has made sure of the bracket; without one the end nearer to a root is not promised.
 * @check x² − 2 on [0, 2] → 1.41421356237
 */
export function bisect(f: (x: number) => number, low: number, high: number): number {
  const rising = f(high) >= 0
  let [a, b] = [low, high]
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = a + (b - a) / 2
    if (middle === a || middle === b) return middle
    if (f(middle) >= 0 === rising) b = middle
    else a = middle
  }
  return a + (b - a) / 2
}
