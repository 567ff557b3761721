/** Whether the level is one for ears. */
import type { Said } from '../../contract/sentences/form/template.ts'
import type { EarPlace } from '../../contract/systems/words.ts'
import { type Caution, caution } from '../caution.ts'
import { fixed } from '../digits.ts'
import { say } from '../say.ts'
import { aWeightingDb, EXPOSURE_LIMIT_DB, exposureTimeS, PEAK_LIMIT_DB, peakLevelDb } from './exposure.ts'

/** From here on nobody sits inside: within 6 dB of the peak limit, as far as a model of the cabin may be wrong. Ours. */
const NOBODY_INSIDE_DB = 134

/** 15 min or 2 h, as a person says it; a dose of less than a minute is no figure to plan with. */
export function spokenTime(seconds: number): Said {
  if (seconds < 60) return say('time.under-a-minute')
  return seconds < 7200
    ? say('time.minutes', { minutesMin: Math.round(seconds / 60) })
    : say('time.hours', { timeHours: fixed(seconds / 3600, 1) })
}

interface Loudest {
  readonly frequencyHz: number
  readonly levelDb: number
}

function loudestOf(frequenciesHz: Float64Array, levelDb: Float64Array): Loudest {
  const index = levelDb.reduce((best, level, k) => (level > (levelDb[best] ?? level) ? k : best), 0)
  return { frequencyHz: frequenciesHz[index] ?? 0, levelDb: levelDb[index] ?? Number.NEGATIVE_INFINITY }
}

function exposureCaution(top: Loudest, weighted: Loudest, place: EarPlace): Caution {
  const allowedS = exposureTimeS(weighted.levelDb)
  const where = place === 'seat' ? say('place.seat') : say('place.half-space-and-more')
  const message = say('hearing-exposure', {
    levelDb: fixed(top.levelDb, 0),
    where,
    frequencyHz: fixed(top.frequencyHz, 0),
    weightedDb: fixed(weighted.levelDb, 0),
    weightedHz: fixed(weighted.frequencyHz, 0),
    time: spokenTime(allowedS),
    orLess: place === 'seat' ? [] : say('hearing-exposure.or-less')
  })
  const level = place === 'seat' ? { seatLevelDb: top.levelDb } : { levelDb: top.levelDb }
  const figures = {
    frequencyHz: top.frequencyHz,
    ...level,
    weightedFrequencyHz: weighted.frequencyHz,
    weightedLevelDb: weighted.levelDb,
    allowedS
  }
  return caution('hearing-exposure', message, { figures })
}

function extremeCaution({ frequencyHz, levelDb }: Loudest, place: EarPlace): Caution {
  const peakDb = peakLevelDb(frequencyHz, levelDb)
  const where = place === 'seat' ? say('place.seat') : say('place.half-space')
  const message = say('hearing-extreme', {
    levelDb: fixed(levelDb, 0),
    where,
    peakDb: fixed(peakDb, 0),
    peakLimitDb: PEAK_LIMIT_DB
  })
  return caution('hearing-extreme', message, { figures: { frequencyHz, levelDb, peakDb, peakLimitDb: PEAK_LIMIT_DB } })
}

/**
 * Highest level of the curve, and how long the loudest frequency for the ear may last; silent where a steady sine would
 * keep the recommended exposure limit for eight hours and stay clear of the peak limit.
 *
 * @param levelDb  at the power given, at that place
 */
export function hearingCautions(
  frequenciesHz: Float64Array,
  levelDb: Float64Array,
  place: EarPlace
): readonly Caution[] {
  const top = loudestOf(frequenciesHz, levelDb)
  const weighted = loudestOf(
    frequenciesHz,
    levelDb.map((level, index) => level + aWeightingDb(frequenciesHz[index] ?? 1))
  )
  return [
    ...(weighted.levelDb > EXPOSURE_LIMIT_DB ? [exposureCaution(top, weighted, place)] : []),
    ...(top.levelDb >= NOBODY_INSIDE_DB ? [extremeCaution(top, place)] : [])
  ]
}
