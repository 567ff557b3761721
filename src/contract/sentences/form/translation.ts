/** Holds the templates of another language against the English ones. */
import type { NamesOf } from './template.ts'

type Agrees<English, Other> = {
  readonly [Id in keyof English & keyof Other]: English[Id] extends string
    ? Other[Id] extends string
      ? [NamesOf<English[Id]>, NamesOf<Other[Id]>] extends [NamesOf<Other[Id]>, NamesOf<English[Id]>]
        ? string
        : {
            readonly 'names differ': Exclude<
              NamesOf<English[Id]> | NamesOf<Other[Id]>,
              NamesOf<English[Id]> & NamesOf<Other[Id]>
            >
          }
      : never
    : never
}

/** Templates of another language: an entry that is missing, or takes other names than the English one, does not compile. */
export const translation =
  <English extends Readonly<Record<string, string>>>() =>
  <const Other extends { readonly [Id in keyof English]: string }>(templates: Other & Agrees<English, Other>): Other =>
    templates

/** Templates in which a variant of a language differs: of ids that the language has, with the names it takes. */
export const variant =
  <English extends Readonly<Record<string, string>>>() =>
  <const Other extends { readonly [Id in keyof Other]: Id extends keyof English ? string : never }>(
    templates: Other & Agrees<English, Other>
  ): Other =>
    templates
