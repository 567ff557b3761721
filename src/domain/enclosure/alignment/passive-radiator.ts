/** Passive radiators in closed form: the response with its notch, and the mass a tuning asks for. */
import type { RationalResponse } from './rational-response.ts'

interface PassiveRadiatorBox {
  /** Vas/Vb. */
  readonly alpha: number
  /** Compliance of the radiators over that of the box. */
  readonly delta: number
  /** Free resonance of the radiators over fs. */
  readonly ratio: number
  readonly qt: number
}

/**
 * Response of a driver with passive radiators, box and radiators lossless; s in units of fs, p = fP/fs.
 *
 *   G = s²(s² + p²)/[s⁴ + s³/QT + s²(α + (1+δ)p² + 1) + s·p²(1+δ)/QT + p²(1+α+δ)]
 *
 * @validity Coil inductance ignored.
 * @source Small, "Passive-radiator loudspeaker systems", JAES 22(8), 1974; opening read, formula from memory and rederived
 * @check  α 1.2, δ 2.5, p 0.6, QT 0.35 at 0.8 fs → |G| 0.126053
 */
export function passiveRadiatorResponse(
  { alpha, delta, ratio, qt }: PassiveRadiatorBox,
  fsHz: number
): RationalResponse {
  const p2 = ratio ** 2
  return {
    numerator: [0, 0, p2, 0, 1],
    denominator: [p2 * (1 + alpha + delta), (p2 * (1 + delta)) / qt, alpha + (1 + delta) * p2 + 1, 1 / qt, 1],
    scaleHz: fsHz
  }
}

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
 * @source Small 1974, as above
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
