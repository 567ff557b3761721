/** What the service says: a sentence of the catalogue with its values, and its English text. */
import { cautionBriefs } from '../contract/cautions/briefs.ts'
import { type CautionCode, cautionCatalogue } from '../contract/cautions/catalogue.ts'
import { english } from '../contract/sentences/english.ts'
import type { Said, SaidFields, ValuesOf } from '../contract/sentences/form/template.ts'
import { isFigure, type Printable, printed, type Writing } from './template.ts'

type English = typeof english
export type SentenceId = keyof English

type Values<Id extends SentenceId> = ValuesOf<English[Id]>

/** Nothing where a template takes nothing. */
type Given<Id extends SentenceId> = Record<never, never> extends Values<Id> ? [] : [Values<Id>]

/** @returns the sentence with its values; a value that its template wants and does not get does not compile */
export function say<Id extends SentenceId>(id: Id, ...[values]: Given<Id>): Said {
  return values === undefined ? { id } : { id, values: values as NonNullable<Said['values']> }
}

type SaidValue = NonNullable<Said['values']>[string]

/** The words of a language: templates by id, and how it writes figures. */
export interface Language extends Writing {
  /** BCP 47. */
  readonly tag: string
  readonly templates: Readonly<Record<string, string>>
  /** How a text is said that has no template, as the reason of a default; English where absent. */
  readonly phrase?: (english: string) => string
  /** The text of a sentence in the units of who reads, where those are not the ones it was written in. */
  readonly measured?: (id: string, text: string) => string
}

function valueText(value: SaidValue | undefined, language: Language): Printable {
  if (value === undefined) throw new RangeError('a sentence lacks a value')
  if (typeof value !== 'object') return value
  return 'id' in value ? spoken(value, language) : value.map(each => spoken(each, language)).join(' ')
}

/** The full stop of a figure or of an abbreviation ends none. */
const firstSentence = (text: string): string => /^.*?[.!?](?=\s+\p{Lu}|$)/su.exec(text)?.[0] ?? text

const OPENING = 'opening'
const CAPITAL = 'capital'

/** The first sentence of a longer one, in whatever language that is said. */
export const opening = (of: Said): Said => ({ id: OPENING, values: { of } })

const PHRASE = 'phrase'

/** A text that stands beside a value, in a sentence: said by its wording. */
export const phrased = (text: string): Said => ({ id: PHRASE, values: { text } })

/** Of the private use area: stands for what is said already, so that it is not measured twice. */
const HELD = 0xe100

/** The sentence with its values, in the units of who reads: words and sentences in it are left alone. */
function measuredText(id: string, valueBy: (name: string) => Printable, language: Language): string {
  const template = language.templates[id]
  if (template === undefined) throw new RangeError(`no sentence ${id}`)
  if (language.measured === undefined) return printed(template, valueBy, language)
  const held: string[] = []
  const hold = (name: string) => {
    const value = valueBy(name)
    if (value === '' || isFigure(value)) return value
    held.push(String(value))
    return String.fromCodePoint(HELD + held.length - 1)
  }
  const text = language.measured(id, printed(template, hold, language))
  return held.reduce((told, value, at) => told.replaceAll(String.fromCodePoint(HELD + at), () => value), text)
}

/** A name at the beginning of a sentence, in whatever language that is said. */
export const capital = (of: Said): Said => ({ id: CAPITAL, values: { of } })

const capitalised = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1)

/** @throws RangeError where the language has no such sentence */
export function spoken({ id, values = {} }: Said, language: Language): string {
  const text = measuredText(id, name => valueText(values[name], language), language)
  if (id === PHRASE) return language.phrase?.(text) ?? text
  if (id === CAPITAL) return capitalised(text)
  return id === OPENING ? firstSentence(text) : text
}

/** Said and spoken at once, for what is read in one language only: a page, a drawing. */
export const told = <Id extends SentenceId>(language: Language, id: Id, ...values: Given<Id>): string =>
  spoken(say(id, ...values), language)

const englishPlurals = new Intl.PluralRules('en')

/** What the catalogue says of each caution stands with the sentences, under an id of its own. */
const meanings = Object.fromEntries(
  Object.entries(cautionCatalogue).map(([code, { meaning }]) => [`meaning.${code}`, meaning])
)

const briefs = Object.fromEntries(Object.entries(cautionBriefs).map(([code, brief]) => [`brief.${code}`, brief]))

/** The short form of a caution, where it has one. */
export const briefOf = (code: CautionCode): Said | undefined =>
  cautionBriefs[code] === undefined ? undefined : ({ id: `brief.${code}` } as Said)

export const englishLanguage: Language = {
  tag: 'en',
  templates: { ...english, ...meanings, ...briefs },
  decimalMark: '.',
  pluralOf: count => englishPlurals.select(count)
}

/** Texts of an object beside the sentences behind them: what stands under `said` is said again in another language. */
export type Worded<Fields extends SaidFields> = {
  readonly [Name in keyof Fields]: NonNullable<Fields[Name]> extends Said ? string : readonly string[]
} & { readonly said: Fields }

export const inEnglish = (said: Said): string => spoken(said, englishLanguage)

/** @returns the English texts of these fields, and their sentences under `said` */
export function worded<const Fields extends SaidFields>(said: Fields): Worded<Fields> {
  const texts = Object.entries(said).map(([name, one]) => [name, 'id' in one ? inEnglish(one) : one.map(inEnglish)])
  return { ...Object.fromEntries(texts), said }
}

/** The sentence behind a text of an object, for a longer one; the text itself where there is none. */
export const saidOf = <Name extends string>(
  object: Readonly<Record<Name, string>> & { readonly said?: Readonly<Partial<Record<Name, Said>>> },
  name: Name
): Said | string => object.said?.[name] ?? object[name]

export type Item = string | Said

/** The sentences behind a list of texts, as `saidOf` finds one. */
export const allSaidOf = <Name extends string>(
  object: Readonly<Record<Name, readonly string[]>> & {
    readonly said?: Readonly<Partial<Record<Name, readonly Said[]>>>
  },
  name: Name
): readonly Item[] => object.said?.[name] ?? object[name]

/** One item after another, with commas; the empty list says nothing. */
export function listed(
  items: readonly Item[],
  id: 'list.commas' | 'list.clauses' | 'list.and' | 'list.or' = 'list.commas'
): Item | readonly [] {
  const [first, ...rest] = items
  if (first === undefined) return []
  const others = listed(rest, id)
  return rest.length === 0 ? first : say(id, { first, rest: others })
}
