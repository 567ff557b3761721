/** What the catalogue says of a source. */

/**
 * How the source is known. A weaker mark is never upgraded; the weakest of what is relied on counts.
 * `read`: the passage relied on was seen; `second-hand`: quoted in another text, or only its abstract or introduction, was seen; `from memory`: recalled, not read;
 * `derived`: follows from stated equations; `practice`: common practice, no source; `ours`: an engineering choice of this service.
 */
export type SourceStatus = 'read' | 'second-hand' | 'from memory' | 'derived' | 'practice' | 'ours'

export interface Source {
  readonly title: string
  readonly status: SourceStatus
}
export type SourceList = Readonly<Record<string, Source>>
