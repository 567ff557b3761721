/** Doubt, said beside a result. Refusals are {@link DesignError}; a caution never stops a calculation. */
import { type CautionCode, cautionCatalogue } from '../contract/cautions/catalogue.ts'
import type { CautionEntry, CautionLevel } from '../contract/cautions/entry.ts'
import type { Said } from '../contract/sentences/form/template.ts'
import type { SourceId } from '../contract/sources/source.ts'
import { present } from './present.ts'
import { inEnglish } from './say.ts'

/** The published texts behind cautions. */
export const cautionSources = (cautions: readonly Caution[]): readonly SourceId[] =>
  cautions.flatMap(({ code }) => (cautionCatalogue[code] as CautionEntry).sources ?? [])

export interface Caution {
  readonly code: CautionCode
  readonly level: CautionLevel
  readonly message: string
  /** The sentence behind the message, for another language. */
  readonly said: { readonly message: Said }
  /** Path of the request field the caution is about. */
  readonly at?: string
  /** The figures that triggered it; each name ends in its unit. */
  readonly figures?: Readonly<Record<string, number>>
}

/** How grave a caution is, to be compared. */
export const gravity: Readonly<Record<CautionLevel, number>> = { note: 0, care: 1, stop: 2 }

/** Equally grave ones stay in their order. */
export const gravestFirst = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.toSorted((a, b) => gravity[b.level] - gravity[a.level])

/** The same doubt in a longer sentence. */
export const resaid = (doubt: Caution, message: Said): Caution => ({
  ...doubt,
  message: inEnglish(message),
  said: { message }
})

interface CautionPlace {
  readonly at?: string
  readonly figures?: Readonly<Record<string, number>>
  /** Only where one code warrants a different level by degree, e.g. far beyond a limit. */
  readonly level?: CautionLevel
}

/** What the catalogue says of a code, with no figures of its own. */
const meaningOf = (code: CautionCode): Said => ({ id: `meaning.${code}` })

/** A caution whose text needs no figures. */
export const catalogued = (code: CautionCode, at?: string): Caution =>
  caution(code, meaningOf(code), at === undefined ? {} : { at })

export function caution(code: CautionCode, message: Said, { at, figures, level }: CautionPlace = {}): Caution {
  return {
    code,
    level: level ?? cautionCatalogue[code].level,
    message: inEnglish(message),
    said: { message },
    ...present({ at, figures })
  }
}
