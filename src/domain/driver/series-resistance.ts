/** What a resistance before a driver does to its damping. */

/**
 * Qes behind a series resistance, over Qes without: 1 + R/Re.
 *
 * @source derived: Qes grows with the resistance of its circuit
 * @check  0.1 Ω on 3.2 Ω → 1.03125
 */
export function qesFactor(seriesOhm: number, reOhm: number): number {
  return 1 + seriesOhm / reOhm
}
