/** Closed forms of the electrical side that no operation needs: second paths for the tests. */
import {
  type CableInAir,
  diameters,
  heatLossAtConductor
} from '../../src/domain/circuit/cable/conductor-temperature.ts'

/**
 * Power of a voltage in a load [W]; the inverse of {@link gainTarget}.
 *
 * @source Ohm's law
 * @check  half the voltage of 600 W at 4 Ω, into 2 Ω → 300 W
 */

export function powerOfVoltage(voltageV: number, loadOhm: number): number {
  return voltageV ** 2 / loadOhm
}

/**
 * Time constant of the conductor's heating.
 *
 *   τ = (C_metal + C_insulation)/(q/ΔT)
 *
 * @returns [s]
 * @check  4 AWG, wall 1.3 mm, ΔT 75 K → 266 s ± 25 s
 */
export function heatingTimeConstant(cable: CableInAir, conductorC: number): number {
  const { innerM, outerM } = diameters(cable)
  const heat = COPPER_HEAT * cable.areaM2 + PVC_HEAT * (Math.PI / 4) * (outerM ** 2 - innerM ** 2)
  return (heat * (conductorC - cable.ambientC)) / heatLossAtConductor(cable, conductorC)
}

/** Fall and heat of a joint: V = I·R, P = I²·R. @check 5 mΩ, 50 A → 0.25 V, 12.5 W */
export function jointLoss(ohm: number, currentA: number): { readonly dropV: number; readonly heatW: number } {
  return { dropV: currentA * ohm, heatW: currentA ** 2 * ohm }
}

/**
 * Efficiency of a class B output stage: (π/4)·√share for a sine, (√π/2)·√share for unclipped Gaussian noise.
 *
 * @source derived: class B theory, output over the mean current of the half waves
 * @check  1/8: 0.2777, 0.3133
 */
export function classBEfficiency(share: number, signal: 'sine' | 'noise'): number {
  return (signal === 'sine' ? Math.PI / 4 : Math.sqrt(Math.PI) / 2) * Math.sqrt(share)
}

/**
 * Crest factor [dB] of programme at a duty: 10·log10(2/duty).
 *
 * @source derived: the peak power of a sine is twice its mean
 * @check  1/8 → 12.04; 1/3 → 7.78
 */
export function crestFactorDb(duty: number): number {
  return 10 * Math.log10(2 / duty)
}

/**
 * Largest loop resistance that still carries a power, Vs²/(4·P) [Ω].
 *
 * @source derived: {@link largestPower} solved for R
 * @check  12 V, 1200 W → 30 mΩ
 */
export function largestLoop(sourceV: number, powerW: number): number {
  return (sourceV * sourceV) / (4 * powerW)
}
/** Density × specific heat [J/(m³·K)]: copper 3.45e6, PVC about 1.7e6. */

export const COPPER_HEAT = 3.45e6
export const PVC_HEAT = 1.7e6
