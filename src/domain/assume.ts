/** Collects the defaults an operation falls back on, so that none of them is silent. */
import type { Default, Rule } from './default.ts'
import type { Assumption } from './outcome.ts'

type Assumable = number | string | boolean

export interface Assumptions {
  /** The given value, or that of the record, which is then noted. */
  readonly take: <Value extends Assumable>(
    given: Value | undefined,
    field: string,
    record: Default<NoInfer<Value>>
  ) => Value
  /** The given value, or one worked out by the rule, which is then noted. */
  readonly work: <Value extends Assumable>(given: Value | undefined, field: string, value: Value, rule: Rule) => Value
  /** Notes what stands in for an absent field, where nothing is to be chosen. */
  readonly note: (field: string, value: Assumable, rule: Rule) => void
  /** The given value, or the default, which is then noted; for rooms whose values are no records yet. */
  readonly or: <Value extends Assumable>(given: Value | undefined, field: string, value: Value, why: string) => Value
  readonly list: readonly Assumption[]
}

/** Every way to assume is one of `or`; the others only read where the value and its reason stand. */
function assumptionsBy(list: readonly Assumption[], or: Assumptions['or']): Assumptions {
  return {
    list,
    or,
    take: (given, field, record) => or(given, field, record.value, record.why),
    work: (given, field, value, { why }) => or(given, field, value, why),
    note: (field, value, { why }) => void or(undefined, field, value, why)
  }
}

export function assumptions(): Assumptions {
  const list: Assumption[] = []
  return assumptionsBy(list, (given, field, value, why) => {
    if (given !== undefined) return given
    list.push({ field, value, why })
    return value
  })
}

/** The same list under other names: a room that knows one source does not know its place in the caller's list. */
export const assumptionsUnder = (assumed: Assumptions, name: (field: string) => string): Assumptions =>
  assumptionsBy(assumed.list, (given, field, value, why) => assumed.or(given, name(field), value, why))
