/** The highest point of a function between two places. */

const SHARE = (Math.sqrt(5) - 1) / 2

/**
 * Golden section.
 *
 * @param f  with one maximum between low and high
 * @returns where it lies
 * @source Kiefer 1953, from memory
 * @check  −(x − 2)² on [0, 5] → 2
 */
export function goldenMaximum(f: (x: number) => number, low: number, high: number, rounds = 60): number {
  let [a, b] = [low, high]
  for (let round = 0; round < rounds; round++) {
    const left = b - SHARE * (b - a)
    const right = a + SHARE * (b - a)
    if (f(left) > f(right)) b = right
    else a = left
  }
  return (a + b) / 2
}
