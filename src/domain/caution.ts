/** Doubt, said beside a result. Refusals are {@link DesignError}; a caution never stops a calculation. */
import { type CautionCode, cautionCatalogue } from '../contract/cautions/catalogue.ts'
import type { CautionEntry, CautionLevel } from '../contract/cautions/entry.ts'
import type { SourceId } from '../contract/sources/source.ts'
import { present } from './present.ts'

/** The published texts behind cautions. */
export const cautionSources = (cautions: readonly Caution[]): readonly SourceId[] =>
  cautions.flatMap(({ code }) => (cautionCatalogue[code] as CautionEntry).sources ?? [])

export interface Caution {
  readonly code: CautionCode
  readonly level: CautionLevel
  readonly message: string
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

interface CautionPlace {
  readonly at?: string
  readonly figures?: Readonly<Record<string, number>>
  /** Only where one code warrants a different level by degree, e.g. far beyond a limit. */
  readonly level?: CautionLevel
}

export function caution(code: CautionCode, message: string, { at, figures, level }: CautionPlace = {}): Caution {
  return {
    code,
    level: level ?? cautionCatalogue[code].level,
    message,
    ...present({ at, figures })
  }
}
