/** Where a figure comes from. Each result lists the ids it rests on; the catalogue is served as a reference table. */
import { acousticSources } from './sources/acoustic.ts'
import { buildSources } from './sources/build.ts'
import { electricalSources } from './sources/electrical.ts'
import { loadSources } from './sources/load.ts'
import { workshopSources } from './sources/workshop.ts'

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

export const sources = {
  ...acousticSources,
  ...buildSources,
  ...electricalSources,
  ...loadSources,
  ...workshopSources
} as const satisfies SourceList
export type SourceId = keyof typeof sources
