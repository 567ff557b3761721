/** What an alternator gives at a speed of its shaft. */

const perMinute = (count: number) => count / 60
/** The speed of the rating [Hz]. */
const RATED_HZ = perMinute(6000)
/** Where it begins to give, and how fast it rises from there [Hz]: fitted. */
const CUT_IN_HZ = perMinute(950)
const RISE_HZ = perMinute(880)

/**
 * Output over that at rated speed.
 *
 *   s = (1 − e^−((n − n0)/τ))/(1 − e^−((6000 − n0)/τ)), n0 = 950, τ = 880 per minute; nothing below n0
 *
 * @param shaftHz  n, speed of the shaft [1/s] ≥ 0: that of the engine times the ratio of the pulleys, 2.5 to 3
 * @returns [1]; a little above 1 beyond the rated speed
 * @validity From some 1500 per minute on; nearer to cut-in a hot one gives a third less than this.
 * @source fitted to one table of a small marine diesel (read: hot 16, 41 and 48 A at 1300, 2500 and 5000); rating at 6000: ISO 8854 (from memory)
 * @check  per minute: 1500 → 0.466; 1800 → 0.621; 2100 → 0.732; of 48 A at 5000: 15.9 A at 1300, 40.1 A at 2500
 */
export function shareAtShaft(shaftHz: number): number {
  const risen = (speedHz: number) => 1 - Math.exp(-Math.max(0, speedHz - CUT_IN_HZ) / RISE_HZ)
  return risen(shaftHz) / risen(RATED_HZ)
}
