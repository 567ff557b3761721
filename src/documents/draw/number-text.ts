/** Figures as a person reads them: few digits, a true minus sign, metric or imperial. */
import type { inchStyles, paperUnits } from '../../contract/boxes/words.ts'
import { CUBIC_FOOT_M3, INCH_M, POUND_KG } from '../../domain/constants.ts'
import { englishLanguage, type Language, told } from '../../domain/say.ts'

/** Who reads: in which language, which units, and so how a figure is written. */
export interface Reader {
  readonly units: (typeof paperUnits)[number]
  /** How inches are written; only with imperial units. */
  readonly inches: (typeof inchStyles)[number]
  readonly language: Language
}
/** Who reads millimetres and English: lists for machines too. */
export const metric: Reader = { units: 'metric', inches: 'decimal', language: englishLanguage }

const FOOT_M = 12 * INCH_M

/** A figure with at most so many decimals, a true minus sign and no trailing zeros. */
export function figure(value: number, decimals: number, { language }: Pick<Reader, 'language'>): string {
  const text = String(Number(value.toFixed(decimals)) + 0)
  return text.replace('e+', 'e').replaceAll('-', '−').replace('.', language.decimalMark)
}

/** A figure with so many significant digits; whole digits are kept. */
export function significant(value: number, digits: number, reader: Pick<Reader, 'language'>): string {
  if (value === 0) return '0'
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))))
  return figure(value, Math.min(decimals, 12), reader)
}

/**
 * Inches to the nearest sixteenth, the fraction in lowest terms; what lies on a thirty-second, as a board does, keeps it.
 *
 * @check  0.364 m → 14 5/16; 0.0127 m → 1/2; 0.0254 m → 1; 0.01825625 m → 23/32
 */
export function sixteenths(lengthM: number): string {
  const count = (lengthM / INCH_M) * 32
  return Math.abs(count - Math.round(count)) < ON_GRID
    ? fraction(lengthM, 32, Math.round)
    : fraction(lengthM, 16, Math.round)
}

/** Nearer than this to a thirty-second is on it: 0.8 µm. */
const ON_GRID = 1e-3

/** Rounding dust is no sixteenth. */
const DUST = 1e-6

/** In fractions of an inch, reduced. */
function fraction(lengthM: number, parts: 16 | 32 | 64, rounded: (count: number) => number): string {
  const count = rounded((Math.abs(lengthM) / INCH_M) * parts)
  const sign = lengthM < 0 && count > 0 ? '−' : ''
  const whole = Math.floor(count / parts)
  let [top, bottom]: [number, number] = [count % parts, parts]
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2]
  if (top === 0) return `${sign}${whole}`
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`
}

/**
 * A hole into which something has to drop: never printed smaller than it is.
 *
 * @check  232 mm → 9 3/16 in, where the nearest, 9 1/8, would be 231.8 mm
 */
export function openingText(lengthM: number, reader: Reader): string {
  const { units, inches } = reader
  if (units === 'metric') return figure(lengthM * 1000, 1, reader)
  if (inches === 'decimal') return figure(Math.ceil((lengthM / INCH_M) * 100 - DUST) / 100, 2, reader)
  return fraction(lengthM, 16, count => Math.ceil(count - DUST))
}

/**
 * A pilot: the next smaller drill, so that the screw bites.
 *
 * @check  3 mm → 7/64 in = 2.78 mm; 1/8 in would be 3.18 mm
 */
export function pilotText(lengthM: number, reader: Reader): string {
  const { units, inches } = reader
  if (units === 'metric') return figure(lengthM * 1000, 1, reader)
  if (inches === 'decimal') return figure(Math.floor((lengthM / INCH_M) * 1000 + DUST) / 1000, 3, reader)
  return fraction(lengthM, 64, count => Math.floor(count + DUST))
}

/** What is less than half an inch or so: to the nearest thirty-second, below a millimetre sixty-fourth, never nothing. */
export function finest(lengthM: number, reader: Reader): string {
  if (reader.inches === 'decimal') return figure(lengthM / INCH_M, 3, reader)
  return fraction(lengthM, lengthM < 1e-3 ? 64 : 32, count => Math.max(1, Math.round(count)))
}

/** A dimension on a drawing: the bare figure, its unit stands in the title block. */
export function dimension(lengthM: number, reader: Reader): string {
  const { units, inches } = reader
  if (units === 'metric') return figure(lengthM * 1000, 1, reader)
  return inches === 'decimal' ? figure(lengthM / INCH_M, 2, reader) : sixteenths(lengthM)
}

export const shortUnit = ({ units }: Pick<Reader, 'units'>): string => (units === 'metric' ? 'mm' : 'in')

export const dimensionUnit = ({ units, inches, language }: Reader): string =>
  units === 'imperial' && inches === 'sixteenths' ? told(language, 'draw.to-sixteenth') : shortUnit({ units })

export const lengthText = (lengthM: number, reader: Reader): string =>
  `${dimension(lengthM, reader)} ${shortUnit(reader)}`

/** Cable runs and the like. */
export const runText = (lengthM: number, reader: Reader): string =>
  reader.units === 'metric' ? `${figure(lengthM, 2, reader)} m` : `${figure(lengthM / FOOT_M, 1, reader)} ft`

/** As it is said: three digits. */
export const volumeText = (volumeM3: number, reader: Reader): string =>
  reader.units === 'metric'
    ? `${significant(volumeM3 * 1000, 3, reader)} L`
    : `${significant(volumeM3 / CUBIC_FOOT_M3, 3, reader)} ft³`

/** In a balance, where rows add up. */
export const balanceText = (volumeM3: number, reader: Reader): string =>
  reader.units === 'metric'
    ? `${figure(volumeM3 * 1000, 2, reader)} L`
    : `${figure(volumeM3 / CUBIC_FOOT_M3, 3, reader)} ft³`

export const massText = (massKg: number, reader: Reader): string =>
  reader.units === 'metric' ? `${figure(massKg, 1, reader)} kg` : `${figure(massKg / POUND_KG, 1, reader)} lb`

/** A size by its name, `2.5 mm²` or `16 AWG`, as the reader writes figures. */
export const sizeText = (designation: string, { language }: Pick<Reader, 'language'>): string =>
  designation.replace(/(\d)\.(?=\d)/g, `$1${language.decimalMark}`)

/** With a capital at the front, as a sentence begins. */
export const opened = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

export function durationText(minutes: number, { language }: Pick<Reader, 'language'>): string {
  const whole = Math.round(minutes)
  if (whole < 60) return `${whole} min`
  const hours = Math.floor(whole / 60)
  const rest = whole % 60
  if (hours < 48) return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
  const days = told(language, 'paper.duration.days', { dayCount: Math.floor(hours / 24) })
  return hours % 24 === 0 ? days : `${days} ${hours % 24} h`
}
