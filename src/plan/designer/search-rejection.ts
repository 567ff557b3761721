/** Why a combination is not among the designs. */
import type { Hindrance, RejectionRule } from '../../contract/systems/words.ts'
import { brokenText, type LimitReading, overshoot } from './search-limits.ts'

export interface Rejection {
  readonly rule: RejectionRule
  readonly detail: string
  /** Of a limit, in `unit`. */
  readonly value?: number
  readonly bound?: number
  readonly unit?: string
  /** Beyond the bound, in `unit`. */
  readonly beyond?: number
}

export const hindered = (rule: Hindrance, detail: string): Rejection => ({ rule, detail })

/** The limit that is broken most, as a share of its bound. */
export function rejectionBy(readings: readonly LimitReading[]): Rejection | undefined {
  const [first, ...others] = readings
  if (first === undefined) return undefined
  const { limit, value, bound, unit, left } = others.reduce(
    (worst, reading) => (overshoot(reading) > overshoot(worst) ? reading : worst),
    first
  )
  const also = readings.length > 1 ? `; ${readings.length - 1} more limits are broken` : ''
  return {
    rule: limit,
    detail: `${brokenText({ limit, value, bound, unit, left })}${also}`,
    value,
    bound,
    unit,
    beyond: -left
  }
}
