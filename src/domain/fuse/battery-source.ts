/** The battery as a source: its rest voltage and resistance, and what it drives into a short circuit. */
import type { Assumptions } from '../assume.ts'
import { twelves } from '../twelves.ts'
import { fuseJudgement } from './fuse-judgement.ts'

export interface BatterySource {
  readonly openCircuitV?: number
  readonly resistanceOhm?: number
  readonly coldCrankingA?: number
}

/** Battery resistance from its cold cranking current [Ω]: (12.6 − 7.2)/CCA for each 12 V; a cold upper bound. @check 600 A → 9 mΩ */
export function batteryOhmFromCranking(coldCrankingA: number): number {
  return (fuseJudgement.batteryRestVPer12V - fuseJudgement.crankingEndV) / coldCrankingA
}

/** Resistance of a battery bank [Ω]: stated, from its cold cranking current, or the default. */
export function batteryOhm(battery: BatterySource, systemVoltageV: number, assumed: Assumptions, at: string): number {
  const inSeries = twelves(systemVoltageV)
  if (battery.resistanceOhm === undefined && battery.coldCrankingA !== undefined) {
    return inSeries * batteryOhmFromCranking(battery.coldCrankingA)
  }
  const { value, why } = fuseJudgement.batteryOhmPer12V
  return assumed.or(battery.resistanceOhm, `${at}resistanceOhm`, inSeries * value, why)
}

/** Rest voltage of a full battery bank [V]. */
export function restVoltage(systemVoltageV: number): number {
  return fuseJudgement.batteryRestVPer12V * twelves(systemVoltageV)
}

/** Open-circuit voltage of the bank [V]. */
export function openCircuit(battery: BatterySource, systemVoltageV: number, assumed: Assumptions, at: string): number {
  const rest = restVoltage(systemVoltageV)
  return assumed.or(battery.openCircuitV, `${at}openCircuitV`, rest, 'rest voltage of a full battery, 12.6 V per 12 V')
}

/**
 * Short-circuit current.
 *
 *   I = Vocv/(Rb + Rloop)
 *
 * @param loopOhm  everything between the source and the fault [Ω] ≥ 0
 * @returns [A]
 * @source Ohm’s law
 * @check  12.6 V, 10 mΩ, 4.99 + 1.8 + 1.0 mΩ → 708.3 A; 12.8 V, 3 mΩ, 0.5 mΩ → 3657 A
 */
export function faultCurrent(openCircuitV: number, sourceOhm: number, loopOhm: number): number {
  return openCircuitV / (sourceOhm + loopOhm)
}

/** Resistance of a fuse-link [Ω] when its sheet is not at hand. @check 75 mV at 40 A is 1.875 mΩ, the rule gives 2.25 */
export function fuseOhm(ratingA: number): number {
  return fuseJudgement.fuseDropV / ratingA
}
