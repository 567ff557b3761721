/** Percentiles of a sample. */

/**
 * Percentile of an ascending sample by linear interpolation between order statistics.
 *
 *   position = (n − 1)·p/100, value = x⌊position⌋ + fraction·(next − it)
 *
 * @param ascending  at least one value, ascending
 * @param percent    0 … 100
 * @source Hyndman & Fan, Sample quantiles in statistical packages, Am. Stat. 50, 1996, definition 7 (from memory)
 * @check  15, 20, 35, 40, 50 at 40 % → 29
 */
export function percentileOfSorted(ascending: Float64Array, percent: number): number {
  const position = ((ascending.length - 1) * percent) / 100
  const below = Math.floor(position)
  const lower = ascending[below] ?? Number.NaN
  const upper = ascending[below + 1] ?? lower
  return lower + (position - below) * (upper - lower)
}
