/** Where a figure comes from. Each result lists the ids it rests on; the catalogue is served as a reference table. */
import { acousticSources } from './acoustic.ts'
import { buildSources } from './build.ts'
import { electricalSources } from './electrical.ts'
import type { SourceList } from './entry.ts'
import { loadSources } from './load.ts'
import { workshopSources } from './workshop.ts'

export const sources = {
  ...acousticSources,
  ...buildSources,
  ...electricalSources,
  ...loadSources,
  ...workshopSources
} as const satisfies SourceList
export type SourceId = keyof typeof sources
/** In the order of the catalogue. */
export const sourceIds = Object.keys(sources) as readonly SourceId[]
