/** Roots of one variable inside a bracket. */

/**
 * Brent's method: inverse quadratic interpolation held inside a shrinking bracket. Also closes in on a pole between two signs.
 *
 * @param f  continuous between low and high
 * @param fLow  f(low), of the opposite sign to fHigh
 * @param tolerance  relative width at which to stop
 * @source Brent, "Algorithms for Minimization without Derivatives", 1973, ch. 4 (from memory)
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  fLow: number,
  fHigh: number,
  tolerance = 1e-11
): number {
  let [a, fa, b, fb] = [low, fLow, high, fHigh]
  let [c, fc] = [a, fa]
  let [step, before] = [b - a, b - a]
  for (let round = 0; round < 100; round++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, fa] = [b, fb]
      ;[b, fb] = [c, fc]
      ;[c, fc] = [a, fa]
    }
    const half = (c - b) / 2
    const width = tolerance * Math.abs(b)
    if (fb === 0 || Math.abs(half) <= width) return b
    const tried = Math.abs(before) >= width && Math.abs(fa) > Math.abs(fb) ? interpolated(a, b, c, fa, fb, fc) : half
    const inside = Math.abs(tried) < Math.min(1.5 * Math.abs(half) - width / 2, Math.abs(before) / 2)
    const forward = tried * half > 0 && inside
    before = forward ? step : half
    step = forward ? tried : half
    ;[a, fa] = [b, fb]
    b += Math.abs(step) > width ? step : Math.sign(half) * width
    fb = f(b)
    if (fb > 0 === fc > 0) {
      ;[c, fc] = [a, fa]
      ;[step, before] = [b - a, b - a]
    }
  }
  return b
}

/** Step from b by inverse quadratic interpolation, or the secant where only two points are known. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa
  if (a === c) return ((c - b) * s) / (s - 1)
  const q = fa / fc
  const r = fb / fc
  return (s * ((c - b) * q * (q - r) - (b - a) * (r - 1))) / -((q - 1) * (r - 1) * (s - 1))
}
