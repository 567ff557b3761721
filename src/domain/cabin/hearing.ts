/** Whether the level at the seat is one for ears. */
import { type Caution, caution } from '../caution.ts'
import { aWeightingDb, EXPOSURE_LIMIT_DB, exposureTimeS } from './exposure.ts'

/** 90 s or 15 min or 2 h, as a person says it. */
export function spokenTime(seconds: number): string {
  if (seconds < 120) return `${Math.max(1, Math.round(seconds))} s`
  return seconds < 7200 ? `${Math.round(seconds / 60)} min` : `${(seconds / 3600).toFixed(1)} h`
}

/**
 * The loudest frequency for the ear, if a steady sine there would exceed the recommended exposure limit within eight hours.
 *
 * @param seatLevelDb at the power given
 */
export function hearingCautions(frequenciesHz: Float64Array, seatLevelDb: Float64Array): readonly Caution[] {
  const weighted = seatLevelDb.map((level, index) => level + aWeightingDb(frequenciesHz[index] ?? 1))
  const loudest = weighted.reduce((best, level, index) => (level > (weighted[best] ?? level) ? index : best), 0)
  const [level = 0, linear = 0, frequencyHz = 0] = [weighted[loudest], seatLevelDb[loudest], frequenciesHz[loudest]]
  if (level <= EXPOSURE_LIMIT_DB) return []
  const allowedS = exposureTimeS(level)
  const message =
    `At the given power the seat can reach ${linear.toFixed(0)} dB at ${frequencyHz.toFixed(0)} Hz, ${level.toFixed(0)} dB A-weighted. ` +
    `The recommended daily exposure is used up in ${spokenTime(allowedS)}; A-weighting gives bass little weight, so ringing or dull ears mean turning it down at once.`
  const figures = { frequencyHz, seatLevelDb: linear, weightedLevelDb: level, allowedS }
  return [caution('hearing-exposure', message, { figures })]
}
