/** The voltage an amplifier shall give at full level, and what a meter reads with a quieter test tone. */

import type { ToneLevel } from '../../contract/amplifiers/amplifier-matching.ts'
import type { Assumptions } from '../assume.ts'
import { amplifierDefaults } from './defaults.ts'
import { targetVoltage } from './formulas.ts'

export interface GainTarget {
  /** Power into the load at full level [W]. */
  readonly powerW: number
  readonly loadOhm: number
  /** RMS at the amplifier's terminals at full level [V]. */
  readonly targetVoltageV: number
  readonly currentA: number
  /** What the target is taken from. */
  readonly limitedBy?: 'amplifier' | 'drivers' | 'asked'
  /** Of each channel of a bridged pair, against ground. */
  readonly channelVoltageV?: number
  readonly channelLoadOhm?: number
}

/**
 * RMS voltage of a power in a load, and what each channel of a bridged pair has of it.
 *
 *   V = √(P·R)     I = V/R     bridged: V/2 into R/2 on each channel
 *
 * @param powerW  P [W] > 0
 * @param loadOhm  R [Ω] > 0
 * @validity The load as a resistance: right at the impedance minimum of the passband, elsewhere the power is lower.
 * @source derived: Ohm's law
 * @check  500 W, 4 Ω → 44.72 V; 500 W, 1 Ω → 22.36 V; 300 W, 2 Ω → 24.49 V; 75 W, 4 Ω → 17.32 V
 */
export function gainTarget(powerW: number, loadOhm: number, bridged: boolean): GainTarget {
  const targetVoltageV = targetVoltage.of({ P: powerW, Z: loadOhm })
  const split = bridged ? { channelVoltageV: targetVoltageV / 2, channelLoadOhm: loadOhm / 2 } : {}
  return { powerW, loadOhm, targetVoltageV, currentA: targetVoltageV / loadOhm, ...split }
}

/** The least of what amplifier and drivers bear and what is asked for, of one output [W]. */
export function setPower(amplifierW: number, driversW = Infinity, askedW = Infinity) {
  const borneW = Math.min(amplifierW, driversW)
  if (askedW < borneW) return { powerW: askedW, limitedBy: 'asked' } as const
  return { powerW: borneW, limitedBy: driversW < amplifierW ? 'drivers' : 'amplifier' } as const
}

/**
 * Meter reading at which to leave the gain, with a test tone below full scale.
 *
 *   Vm = V·10^((L + o)/20), never above V
 *
 * @param targetVoltageV  V [V] > 0, at which the amplifier or the drivers end
 * @param toneLevelDb  L [dB below full scale] ≤ 0
 * @param quietRecordingDb  o [dB] ≥ 0: allowance for quiet recordings: how far loud ones pass the target
 * @source derived; the allowance is common practice, no source
 * @check  40 V, −12 dB, 4 dB → 15.92 V; 0 dB tone and no allowance → the target itself
 */
export function meterVoltage(targetVoltageV: number, toneLevelDb: number, quietRecordingDb: number): number {
  return Math.min(targetVoltageV, targetVoltageV * 10 ** ((toneLevelDb + quietRecordingDb) / 20))
}

export interface MeterReading {
  readonly toneLevelDb: number
  readonly quietRecordingDb: number
  /** At the amplifier's terminals [V]. */
  readonly meterVoltageV: number
  /** From each terminal of a bridged pair to ground [V]. */
  readonly channelMeterVoltageV?: number
}

/** The reading for a target, with the defaults of a full-scale tone and no allowance. */
export function meterReading(
  { targetVoltageV, channelVoltageV }: GainTarget,
  tone: ToneLevel,
  boostDb: number,
  assumed: Assumptions
): MeterReading {
  const { toneLevelDb: usualLevelDb, quietRecordingDb } = amplifierDefaults
  const toneLevelDb = assumed.take(tone.levelDb, 'tone.levelDb', usualLevelDb)
  const allowance = assumed.take(tone.quietRecordingDb, 'tone.quietRecordingDb', quietRecordingDb)
  const meterVoltageV = meterVoltage(targetVoltageV, toneLevelDb - boostDb, allowance)
  return {
    toneLevelDb,
    quietRecordingDb: allowance,
    meterVoltageV,
    ...(channelVoltageV === undefined ? {} : { channelMeterVoltageV: meterVoltageV / 2 })
  }
}

/**
 * Voltage gain from input to output [dB]: 20·lg(Vout/Vin).
 *
 * @source definition of the decibel
 * @check  40 V from 2 V → 26.02 dB
 */
export function voltageGainDb(outputV: number, inputV: number): number {
  return 20 * Math.log10(outputV / inputV)
}
