/** Sources of the acoustic rooms. */
import type { SourceList } from '../source.ts'

export const acousticSources = {} as const satisfies SourceList
