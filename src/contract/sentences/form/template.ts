/**
 * A sentence as data: a template in the message syntax of ICU, of which four forms are read: `{name}`,
 * `{name, plural, =0 {…} one {…} other {…}}`, `{name, select, word {…} other {…}}`, and `#` for the number inside a plural.
 * A branch holds a blank or nothing, so that the types can tell it from a name.
 */

/** Endings that make a name a figure: digits are printed as the language prints them. */
type FigureEnding =
  | 'A'
  | 'Ah'
  | 'Awg'
  | 'C'
  | 'Count'
  | 'Db'
  | 'Deg'
  | 'F'
  | 'Hours'
  | 'Hz'
  | 'J'
  | 'Kg'
  | 'Kpa'
  | 'L'
  | 'M'
  | 'Ma'
  | 'MPerS'
  | 'Min'
  | 'Mm'
  | 'Mm2'
  | 'Ms'
  | 'Mv'
  | 'N'
  | 'Ohm'
  | 'Mohm'
  | 'Percent'
  | 'Q'
  | 'Ratio'
  | 'S'
  | 'Times'
  | 'V'
  | 'W'

/** A number already rounded for reading; as text where trailing noughts are meant. */
export type Figure = number | `${number}`

/** What stands between braces up to the first closing one; nothing where it is the text of a branch. */
type NameIn<Inside extends string> = Inside extends '' | `{${string}`
  ? never
  : Inside extends `${infer Name}, plural,${string}`
    ? Name
    : Inside extends `${infer Name}, select,${string}`
      ? Name
      : Inside extends `${string} ${string}` | `${string}\n${string}`
        ? never
        : Inside

type FirstOf<Rest extends string> = Rest extends `${infer Inside}}${string}` ? NameIn<Inside> : never

/** The names a template takes. */
export type NamesOf<Text extends string, Found extends string = never> = Text extends `${string}{${infer Rest}`
  ? NamesOf<Rest, Found | FirstOf<Rest>>
  : Found

type Counted<Text extends string, Name extends string> = Text extends `${string}{${Name}, plural,${string}`
  ? true
  : false

/** A figure by its ending or its plural; else words: the caller's own, ours as sentences, or a list of those. */
type ValueOf<Text extends string, Name extends string> =
  Counted<Text, Name> extends true
    ? number
    : Name extends `${string}${FigureEnding}`
      ? Figure
      : string | number | Said | readonly Said[]

export type ValuesOf<Text extends string> = { readonly [Name in NamesOf<Text>]: ValueOf<Text, Name> }

/** A sentence that was said: which, and with what. Plain data, so that it can be said again in another language. */
export interface Said {
  readonly id: string
  readonly values?: Readonly<Record<string, string | number | Said | readonly Said[]>>
}

/** By field, what the texts of an object say. */
export type SaidFields = Readonly<Record<string, Said | readonly Said[]>>
