/** Why a combination is not among the designs. */

import type { LimitReading, RejectedDesign } from '../../contract/systems/design-system.ts'
import type { Hindrance } from '../../contract/systems/words.ts'
import { brokenText } from './search-limits.ts'

export type Rejection = Pick<RejectedDesign, 'rule' | 'detail' | 'value' | 'bound' | 'unit' | 'beyond'>

export const hindered = (rule: Hindrance, detail: string): Rejection => ({ rule, detail })

/** The first limit that is broken, in the order in which they can be known. */
export function rejectionBy(readings: readonly LimitReading[]): Rejection | undefined {
  const [first, ...others] = readings
  if (first === undefined) return undefined
  const { limit, value, bound, unit, left } = first
  const also = others.length === 0 ? '' : `; ${others.length} more limits are broken`
  return { rule: limit, detail: `${brokenText(first)}${also}`, value, bound, unit, beyond: -left }
}
