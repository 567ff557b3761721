/** Says again in another language whatever keeps the sentence behind its text. */
import type { Said, SaidFields } from '../contract/sentences/form/template.ts'
import { type Language, spoken } from './say.ts'

type Plain = Readonly<Record<string, unknown>>

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype

const again = (said: Said | readonly Said[], language: Language): string | readonly string[] =>
  'id' in said ? spoken(said, language) : said.map(each => spoken(each, language))

/** Fields whose texts stand beside a value and are found by their wording. */
const phrased = new Set([
  'basis',
  'detail',
  'goodAt',
  'how',
  'method',
  'rule',
  'stage',
  'standard',
  'text',
  'to',
  'why'
])

function phraseIn(value: unknown, phrase: (english: string) => string): unknown {
  if (typeof value === 'string') return phrase(value)
  return Array.isArray(value) && value.every(each => typeof each === 'string') ? value.map(phrase) : undefined
}

function objectIn(object: Plain, language: Language): Plain {
  const { said = {} } = object as { said?: SaidFields }
  return Object.fromEntries(
    Object.entries(object).map(([name, inner]) => {
      const sentence = said[name]
      if (sentence !== undefined) return [name, again(sentence, language)]
      const phrase = phrased.has(name) && language.phrase !== undefined ? phraseIn(inner, language.phrase) : undefined
      return [name, phrase ?? (name === 'said' ? inner : inLanguage(inner, language))]
    })
  )
}

/** Curves are left alone: a list that begins with a number holds no words. */
function valueIn(value: unknown, language: Language): unknown {
  if (Array.isArray(value)) {
    return typeof value[0] === 'number' ? value : value.map(each => valueIn(each, language))
  }
  return isPlain(value) ? objectIn(value, language) : value
}

/** @returns the same, with every text that has a sentence under `said` in this language */
export const inLanguage = <Value>(value: Value, language: Language): Value => valueIn(value, language) as Value
