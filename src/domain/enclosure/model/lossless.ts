/** Losses that nobody states. */
import type { Assumptions } from '../../assume.ts'

/** A loss that nobody states is none: the computed default, and echoed. */
export function echoLossless(q: number | undefined, field: string, why: string, assume: Assumptions): void {
  if (q === undefined) assume.or<string>(undefined, field, 'none', why)
}
