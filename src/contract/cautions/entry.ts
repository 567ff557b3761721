/** What the catalogue says of a caution. */
import type { SourceId } from '../sources/source.ts'

/** `note`: know this. `care`: change it or watch it. `stop`: do not build or switch this on. */
export type CautionLevel = 'note' | 'care' | 'stop'

export interface CautionEntry {
  readonly level: CautionLevel
  /** What it means and what to do, for the catalogue; the caution itself carries the figures. */
  readonly meaning: string
  /** Where the threshold comes from: a source in words, or 'common practice, no source'. */
  readonly basis: string
  /** Ids of the published texts that the basis names; a plan that gives the caution lists them. */
  readonly sources?: readonly SourceId[]
}
export type CautionCatalogue = Readonly<Record<string, CautionEntry>>
