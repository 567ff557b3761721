/** Which limits a design keeps, which it breaks and by how much. */

import type { DesignLimits } from '../../contract/systems/design-search.ts'
import type { DesignFigures, LimitReading } from '../../contract/systems/design-system.ts'
import { type DesignLimitName, designLimitNames } from '../../contract/systems/words.ts'
import { inDigits } from '../../domain/digits.ts'
import { rankDefaults } from './defaults.ts'

interface LimitRow {
  readonly field: keyof DesignLimits
  readonly figure: keyof DesignFigures
  readonly words: string
  /** Unit people read, and how many of it make one in SI. */
  readonly unit: string
  readonly perSi: number
  readonly atLeast?: true
}

/** In the order in which they can be known: the cheap ones first. */
const rows: Readonly<Record<DesignLimitName, LimitRow>> = {
  price: { field: 'pricePerSystem', figure: 'price', words: 'drivers and amplifier cost', unit: '1', perSi: 1 },
  'full-sine-current': {
    field: 'fullSineA',
    figure: 'fullSineA',
    words: 'the supply gives at full sine',
    unit: 'A',
    perSi: 1
  },
  'average-current': {
    field: 'averageA',
    figure: 'averageA',
    words: 'the supply gives on average',
    unit: 'A',
    perSi: 1
  },
  'box-size': { field: 'outerVolumeM3', figure: 'outerVolumeM3', words: 'the box takes', unit: 'L', perSi: 1000 },
  mass: { field: 'massKg', figure: 'massKg', words: 'the box weighs', unit: 'kg', perSi: 1 },
  reach: { field: 'f3AtMostHz', figure: 'f3Hz', words: 'half power lies at', unit: 'Hz', perSi: 1 },
  level: {
    field: 'levelAtLeastDb',
    figure: 'levelDb',
    words: 'the level reaches',
    unit: 'dB',
    perSi: 1,
    atLeast: true
  },
  excursion: {
    field: 'excursionOfXmax',
    figure: 'excursionOfXmax',
    words: 'the cone moves, of Xmax,',
    unit: '1',
    perSi: 1
  },
  'air-speed': {
    field: 'airSpeedMPerS',
    figure: 'airSpeedMPerS',
    words: 'the air in the port moves at',
    unit: 'm/s',
    perSi: 1
  }
}

/** Beyond the bound, as a share of it; how rejections are compared with each other. */
export function overshoot({ limit, bound, left }: LimitReading): number {
  return rows[limit].atLeast ? -left * rankDefaults.dbShare.value : -left / Math.max(Math.abs(bound), 1e-9)
}

/** Every limit that is set and whose figure is known. A closed box moves no air in a port. */
export function readLimits(limits: DesignLimits, figures: Partial<DesignFigures>): readonly LimitReading[] {
  return designLimitNames.flatMap(limit => {
    const { field, figure, unit, perSi, atLeast } = rows[limit]
    const bound = limits[field]
    const value = figures[figure]
    if (bound === undefined || typeof value !== 'number') return []
    const left = (atLeast ? value - bound : bound - value) * perSi
    return [{ limit, value: value * perSi, bound: bound * perSi, unit, left }]
  })
}

/**
 * Outwards, so that the figure keeps the bound: money and amperes to four digits, decibels to the whole, what a box decides to
 * two, for the next search lays out another box.
 */
function outward({ limit, value }: LimitReading): number {
  if (rows[limit].atLeast) return Math.floor(value)
  const digits = limit === 'price' || rows[limit].unit === 'A' ? 4 : 2
  const step = 10 ** (Math.floor(Math.log10(Math.max(value, 1e-9))) + 1 - digits)
  return Number((Math.ceil(value / step - 1e-9) * step).toPrecision(digits))
}

/** The limits with which these figures would be kept. */
export function givenWay(readings: readonly LimitReading[]): DesignLimits {
  return Object.fromEntries(
    readings.map(reading => {
      const { field, perSi } = rows[reading.limit]
      return [field, outward(reading) / perSi]
    })
  )
}

export const broken = (readings: readonly LimitReading[]) => readings.filter(({ left }) => left < 0)

export function brokenText({ limit, value, bound, unit, left }: LimitReading): string {
  const { words, atLeast } = rows[limit]
  const named = unit === '1' ? '' : ` ${unit}`
  return `${words} ${inDigits(value, 4)}${named}, ${inDigits(-left, 4)}${named} ${atLeast ? 'below the least' : 'above the most'} allowed, ${inDigits(bound, 4)}${named}`
}
