/** Collects the defaults an operation falls back on, so that none of them is silent. */
import type { Assumption } from './outcome.ts'

export interface Assumptions {
  /** The given value, or the default, which is then recorded. */
  readonly or: <Value extends number | string | boolean>(
    given: Value | undefined,
    field: string,
    value: Value,
    why: string
  ) => Value
  readonly list: readonly Assumption[]
}

export function assumptions(): Assumptions {
  const list: Assumption[] = []
  return {
    list,
    or: (given, field, value, why) => {
      if (given !== undefined) return given
      list.push({ field, value, why })
      return value
    }
  }
}
