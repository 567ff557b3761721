/** Reference efficiency of a driver and the pass-band levels that follow from it. */
import { REFERENCE_PRESSURE_PA } from '../constants.ts'

/**
 * Share of the electrical power that leaves as sound into half space, in the mass-controlled band.
 *
 *   η0 = 4π²·fs³·Vas/(c³·Qes)
 *
 * @param fsHz  [Hz] > 0
 * @param qes  > 0
 * @param vasM3  [m³] > 0
 * @param soundSpeedMPerS  [m/s] > 0
 * @validity Wavelengths long against the cone; coil inductance ignored.
 * @source Small, "Direct-radiator loudspeaker system analysis", JAES 20(5), 1972; from memory, rederived
 * @check  fs 30, Qes 0.45, Vas 60 L, c 343.2 → 0.00351577
 */
export function referenceEfficiency(fsHz: number, qes: number, vasM3: number, soundSpeedMPerS: number): number {
  return (4 * Math.PI ** 2 * fsHz ** 3 * vasM3) / (soundSpeedMPerS ** 3 * qes)
}

/**
 * Level at 1 m in half space of an acoustic power.
 *
 *   L = 10·lg(P·ρc/(2π)/p0²)
 *
 * @param acousticPowerW  [W] > 0
 * @param impedancePaSPerM  ρc [Pa·s/m] > 0
 * @source derived: the power spread evenly over 2π·(1 m)²
 * @check  1 W at ρ 1.18, c 345 → 112.095 dB
 */
export function halfSpaceLevelDb(acousticPowerW: number, impedancePaSPerM: number): number {
  return 10 * Math.log10((acousticPowerW * impedancePaSPerM) / (2 * Math.PI) / REFERENCE_PRESSURE_PA ** 2)
}
