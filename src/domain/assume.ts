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
  readonly list: readonly Assumption[]
}

/** Every way to assume is one of `work`; the others only read where the value stands. */
function assumptionsBy(list: readonly Assumption[], work: Assumptions['work']): Assumptions {
  return {
    list,
    work,
    take: (given, field, record) => work(given, field, record.value, record),
    note: (field, value, rule) => void work(undefined, field, value, rule)
  }
}

export function assumptions(): Assumptions {
  const list: Assumption[] = []
  return assumptionsBy(list, (given, field, value, { why }) => {
    if (given !== undefined) return given
    list.push({ field, value, why })
    return value
  })
}

/** The same list under other names: a room that knows one source does not know its place in the caller's list. */
export const assumptionsUnder = (assumed: Assumptions, name: (field: string) => string): Assumptions =>
  assumptionsBy(assumed.list, (given, field, value, rule) => assumed.work(given, name(field), value, rule))
