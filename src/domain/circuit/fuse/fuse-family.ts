/** What is known of a family of fuse-links. */
import type { SourceId } from '../../../contract/sources/source.ts'
import type { FuseType } from '../../../contract/supply/words.ts'

export interface FuseFamily {
  readonly type: FuseType
  readonly standard: string
  /** Rated voltages made [V]. */
  readonly voltagesV: readonly number[]
  readonly breakingA: number
  readonly ratingsA: readonly number[]
  readonly source: SourceId
  readonly status: string
}
