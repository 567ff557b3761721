/** Sentences for who measures in inches: the lengths, areas, volumes, masses and forces that a sentence tells, in those units. */
import { CUBIC_FOOT_M3, INCH_M, POUND_KG, STANDARD_GRAVITY_M_PER_S2 } from '../../domain/constants.ts'
import type { Language } from '../../domain/say.ts'
import { dimension, figure, finest, type Reader, significant } from './number-text.ts'

/**
 * What stays as it is printed on things or sheets in any market: travel and excursion, screws and bolts by their metric names,
 * classes of insulation, levels at one metre, forms of fuses, and what a source says word for word.
 */
const AS_PRINTED =
  /^(chart|compare|fuse-form|driver|contract|refused)\b|^answer\.(cone|the-cone|up-to-db|driver-region|take-a-c)|excursion|travel|insulation|conductor-hot|coil|sensitivity|half-space|highest-level|^(bill|cable-bill|part)\..*(screw|bolt|receptacle|pan-head|closed-cell|g-m-on|0-1-l|strap-with-label)|un-r17/

const SMALL_MM = 10
const FOOT_M = 12 * INCH_M
const POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY_M_PER_S2

/** Amount of one unit in another: figure, then unit. */
const units: Readonly<Record<string, (amount: number, reader: Reader) => readonly [string, string]>> = {
  mm: (amount, reader) => [(amount < SMALL_MM ? finest : dimension)(amount * 1e-3, reader), 'in'],
  m: (amount, reader) => [figure(amount / FOOT_M, 1, reader), 'ft'],
  'm²': (amount, reader) => [significant(amount / FOOT_M ** 2, 2, reader), 'ft²'],
  L: (amount, reader) =>
    amount < 1
      ? [significant((amount * 1e-3) / INCH_M ** 3, 2, reader), 'in³']
      : [significant((amount * 1e-3) / CUBIC_FOOT_M3, 3, reader), 'ft³'],
  kg: (amount, reader) => [inProse(amount / POUND_KG, reader), 'lb'],
  N: (amount, reader) => [inProse(amount / POUND_FORCE_N, reader), 'lbf'],
  '°C': (amount, reader) => [figure(1.8 * amount + 32, 0, reader), '°F']
}

/** Two digits, three where the first is 1: either way to a few per cent. */
function inProse(value: number, reader: Reader): string {
  const digits = value.toExponential(2).startsWith('1') ? 3 : 2
  return significant(Number(value.toPrecision(digits)), digits, reader)
}

const NUMBER = String.raw`\d+(?:[.,]\d+)?`
/** One figure, or several that share their unit. */
const AMOUNTS = new RegExp(
  String.raw`(?<![\d.,/A-Z⌀])(${NUMBER}(?:(?: × | to | or | of | bis | oder )${NUMBER})*)[  ](mm|m²|m|L|kg|N|°C)(?![\p{L}\d_²³/·])`,
  'gu'
)

/** Round distances of the trade stay round: 50 mm of air are 2 in, 1 mm of play 1/16. */
const roundMm = (amount: number, reader: Reader): readonly [string, string] => {
  const sixteenths = amount < 20 ? 1 : 4
  const lengthM = (Math.max(1, Math.round((amount * 1e-3 * 16) / INCH_M / sixteenths)) * sixteenths * INCH_M) / 16
  return [amount < 1 ? finest(amount * 1e-3, reader) : dimension(lengthM, reader), 'in']
}

/** A pull that is told by feel: 50 N are about 11 lbf. */
const roundN = (amount: number, reader: Reader): readonly [string, string] => [
  significant(amount / POUND_FORCE_N, 2, reader),
  'lbf'
]

type Units = typeof units

const inInches = (text: string, reader: Reader, by: Units = units): string =>
  text.replace(AMOUNTS, (whole: string, amounts: string, unit: string) => {
    const convert = by[unit]
    if (convert === undefined) return whole
    let into = unit
    const told = amounts.replace(new RegExp(NUMBER, 'g'), each => {
      const [amount, other] = convert(Number(each.replace(reader.language.decimalMark, '.')), reader)
      into = other
      return amount
    })
    return `${told} ${into}`
  })

function measuredLanguage(reader: Reader): Language {
  const { language } = reader
  const round = { ...units, mm: roundMm, N: roundN }
  const templates = Object.entries(language.templates).map(([id, template]) => [
    id,
    AS_PRINTED.test(id) ? template : inInches(template, reader, round)
  ])
  return {
    ...language,
    templates: Object.fromEntries(templates),
    measured: (id, text) => (AS_PRINTED.test(id) ? text : inInches(text, reader))
  }
}

/** Languages and ways to write inches are few. */
const made = new Map<string, Language>()

/** @returns the language as this reader's paper asks */
export function inUnitsOf({ units: system, inches }: Pick<Reader, 'units' | 'inches'>, language: Language): Language {
  if (system === 'metric') return language
  const key = `${language.tag} ${inches}`
  const known = made.get(key) ?? measuredLanguage({ units: system, inches, language })
  made.set(key, known)
  return known
}
