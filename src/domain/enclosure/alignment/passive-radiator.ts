/** Passive radiators in closed form: the compliance a ratio asks for, and the mass a tuning asks for. */

export interface RadiatorSize {
  readonly count: number
  /** Of one unit. */
  readonly areaM2: number
}

/**
 * Compliance of one unit that gives a ratio δ to the air of the box.
 *
 *   C = δ·V/(n·ρc²·S²)
 *
 * @source derived: the definition of δ, solved for C
 */
export function radiatorComplianceMPerN(
  delta: number,
  volumeM3: number,
  { count, areaM2 }: RadiatorSize,
  stiffnessPa: number
): number {
  return (delta * volumeM3) / (count * stiffnessPa * areaM2 ** 2)
}

interface RadiatorTuning {
  readonly delta: number
  /** Free-air resonance of the loaded unit: the notch of the response. */
  readonly resonanceHz: number
  /** Moving mass of one unit, air load and added weight in it. */
  readonly massKg: number
}

/**
 * Mass of one unit for a tuning.
 *
 *   δ = n·ρc²·S²·C/V   fP = fB/√(1+δ)   m = 1/((2π·fP)²·C)
 *
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974; opening read, formula from memory and rederived
 * @check  δ 2.5, fP 18 Hz ↔ fB 33.6749 Hz
 */
export function radiatorTuning(
  tuningHz: number,
  volumeM3: number,
  { count, areaM2 }: RadiatorSize,
  complianceMPerN: number,
  stiffnessPa: number
): RadiatorTuning {
  const delta = (count * stiffnessPa * areaM2 ** 2 * complianceMPerN) / volumeM3
  const resonanceHz = tuningHz / Math.sqrt(1 + delta)
  return { delta, resonanceHz, massKg: 1 / ((2 * Math.PI * resonanceHz) ** 2 * complianceMPerN) }
}
