/** The highest point of a function between two places. */

const SHARE = (Math.sqrt(5) - 1) / 2
/** A maximum cannot be told finer than the square root of the last bit. */
const ROUNDS = 40

/**
 * Golden section; one evaluation a round.
 *
 * @param f  with one maximum between low and high
 * @returns where it lies
 * @source Kiefer 1953, from memory
 * @check  −(x − 2)² on [0, 5] → 2
 */
export function goldenMaximum(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high]
  let [left, right] = [b - SHARE * (b - a), a + SHARE * (b - a)]
  let [atLeft, atRight] = [f(left), f(right)]
  for (let round = 0; round < ROUNDS; round++) {
    if (atLeft > atRight) {
      b = right
      ;[right, atRight] = [left, atLeft]
      left = b - SHARE * (b - a)
      atLeft = f(left)
    } else {
      a = left
      ;[left, atLeft] = [right, atRight]
      right = a + SHARE * (b - a)
      atRight = f(right)
    }
  }
  return (a + b) / 2
}
