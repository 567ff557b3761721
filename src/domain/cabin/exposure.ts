/** How long ears may be exposed to a level. */

// IEC 61672-1: pole frequencies of the A weighting [Hz], and its normalisation at 1 kHz. From memory.
const F1 = 20.598997
const F2 = 107.65265
const F3 = 737.86223
const F4 = 12194.217
const AT_1_KHZ_DB = 1.9997
const C_AT_1_KHZ_DB = 0.0619

/**
 * A weighting.
 *
 *   20 lg[f4²f⁴/((f² + f1²)√(f² + f2²)√(f² + f3²)(f² + f4²))] + 2.00 dB
 *
 * @param frequencyHz above 0
 * @source IEC 61672-1, Electroacoustics - Sound level meters (from memory)
 * @check  31.5 Hz → −39.4 dB; 63 Hz → −26.2 dB; 1 kHz → 0 dB
 */
export function aWeightingDb(frequencyHz: number): number {
  const f2 = frequencyHz * frequencyHz
  const gain = (F4 ** 2 * f2 * f2) / ((f2 + F1 ** 2) * Math.sqrt((f2 + F2 ** 2) * (f2 + F3 ** 2)) * (f2 + F4 ** 2))
  return 20 * Math.log10(gain) + AT_1_KHZ_DB
}

/**
 * C weighting, which counts peaks of sound.
 *
 *   20 lg[f4²f²/((f² + f1²)(f² + f4²))] + 0.06 dB
 *
 * @param frequencyHz above 0
 * @source IEC 61672-1, Electroacoustics - Sound level meters (from memory)
 * @check  31.5 Hz → −3.0 dB; 63 Hz → −0.8 dB; 1 kHz → 0 dB
 */
export function cWeightingDb(frequencyHz: number): number {
  const f2 = frequencyHz * frequencyHz
  return 20 * Math.log10((F4 ** 2 * f2) / ((f2 + F1 ** 2) * (f2 + F4 ** 2))) + C_AT_1_KHZ_DB
}

/**
 * Peak of a steady sine, C-weighted.
 *
 *   L + 20 lg √2 + C(f)
 *
 * @source derived
 * @check  137 dB at 1 kHz → 140.01 dB
 */
export function peakLevelDb(frequencyHz: number, levelDb: number): number {
  return levelDb + 10 * Math.log10(2) + cWeightingDb(frequencyHz)
}

/** Peak at which nobody may work, C-weighted: 200 Pa. Directive 2003/10/EC, article 3 (second-hand). */
export const PEAK_LIMIT_DB = 140

/** Recommended exposure limit: this A-weighted level for this long, half the time for every 3 dB more. */
export const EXPOSURE_LIMIT_DB = 85
const EXPOSURE_TIME_S = 8 * 3600
const EXCHANGE_DB = 3

/**
 * Time in which a steady level uses up a day's recommended dose.
 *
 *   T = 8 h/2^((L − 85 dB)/3 dB)
 *
 * @param levelDb A-weighted
 * @source NIOSH, Criteria for a recommended standard: occupational noise exposure, publication 98-126, 1998 (second-hand)
 * @check  85 dB → 8 h; 88 dB → 4 h; 94 dB → 60 min; 100 dB → 15 min
 */
export function exposureTimeS(levelDb: number): number {
  return EXPOSURE_TIME_S / 2 ** ((levelDb - EXPOSURE_LIMIT_DB) / EXCHANGE_DB)
}
