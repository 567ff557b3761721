/** What the resistance of the cable takes from level, damping and electrical Q. */

/**
 * Level at the load against a cable without resistance.
 *
 *   20·lg(Z/(Z + Rw))
 *
 * @source derived: voltage divider
 * @check  4 Ω, 3 m of 16 AWG (80.63 mΩ) → −0.173 dB; 1 Ω → −0.6735 dB
 */
export function cableLossDb(loadOhm: number, loopOhm: number): number {
  return 20 * Math.log10(loadOhm / (loadOhm + loopOhm))
}

/**
 * Resistance of an amplifier's output [Ω]: Z/DF.
 *
 * @source definition of the damping factor
 * @check  4 Ω, 50 → 80 mΩ
 */
export function outputOhm(loadOhm: number, amplifierDampingFactor: number): number {
  return loadOhm / amplifierDampingFactor
}

/**
 * Damping factor at the end of the cable: Z/(Z/DF + Rw).
 *
 * @source derived: the resistance of amplifier and cable in series
 * @check  4 Ω, 200, 0.0806 Ω → 39.76
 */
export function dampingFactorAtLoad(loadOhm: number, amplifierDampingFactor: number, loopOhm: number): number {
  return loadOhm / (outputOhm(loadOhm, amplifierDampingFactor) + loopOhm)
}
