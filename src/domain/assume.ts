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

export function assumptions(): Assumptions {
  const list: Assumption[] = []
  const or: Assumptions['or'] = (given, field, value, why) => {
    if (given !== undefined) return given
    list.push({ field, value, why })
    return value
  }
  return {
    list,
    or,
    take: (given, field, record) => (given === undefined ? or(given, field, record.value, record.why) : given),
    work: (given, field, value, { why }) => or(given, field, value, why),
    note: (field, value, { why }) => {
      list.push({ field, value, why })
    }
  }
}
