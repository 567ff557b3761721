/** Sources of the build rooms. */
import type { SourceList } from '../source.ts'

export const buildSources = {} as const satisfies SourceList
