/** Losses that nobody states. */

import type { Assumptions } from '../../assume.ts'
import type { Rule } from '../../default.ts'

/** A loss that nobody states is none: the computed default, and echoed. */
export function echoLossless(q: number | undefined, field: string, rule: Rule, assume: Assumptions): void {
  if (q === undefined) assume.note(field, 'none', rule)
}
