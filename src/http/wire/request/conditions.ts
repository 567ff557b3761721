/**
 * What a schema of fields alone does not say: which fields go together and which do not. The domain refuses the same; here it
 * stands for forms that are made from a schema, and for a question that is not to be calculated. Not every refusal is of this
 * kind: what follows from figures shows when it is worked out.
 */
import { branchesOf, type JsonSchema } from '../../../contract/field/component.ts'
import type { ProblemError } from '../problem/problem.ts'

interface Condition {
  readonly fields: readonly [string, string]
  /** One of the two must be there; else they are only never there together. */
  readonly needed?: true
  readonly detail: string
}

/** By the name of the object in the contract. */
const conditions: Readonly<Record<string, readonly Condition[]>> = {
  CoilWiringRequest: [
    {
      fields: ['coilOhm', 'coilsOhm'],
      needed: true,
      detail: 'Give coilOhm when all coils are alike, or coilsOhm with one entry a coil, not both.'
    }
  ],
  CableRequest: [
    { fields: ['loadPowerW', 'currentA'], needed: true, detail: 'Give the power drawn or the current, not both.' },
    { fields: ['dropLimitV', 'dropLimitPercent'], detail: 'Give the drop limit in volts or in percent, not both.' }
  ],
  Source: [
    { fields: ['voltageV', 'powerW'], detail: 'Give voltageV, or powerW with loadOhm, not both.' },
    { fields: ['voltageV', 'loadOhm'], detail: 'Give voltageV, or powerW with loadOhm, not both.' }
  ]
}

/** The same in words of JSON Schema; nothing for an object without conditions. */
export function conditionKeywords(name: string): { readonly allOf?: readonly object[] } {
  const found = Object.hasOwn(conditions, name) ? (conditions[name] ?? []) : []
  if (found.length === 0) return {}
  return {
    allOf: found.map(({ fields, needed }) =>
      needed === true ? { oneOf: fields.map(field => ({ required: [field] })) } : { not: { required: [...fields] } }
    )
  }
}

type Members = Readonly<Record<string, unknown>>

function broken({ fields, needed, detail }: Condition, value: Members, at: string): readonly ProblemError[] {
  const [first, second] = fields
  const given = fields.filter(field => value[field] !== undefined).length
  if (given === 2) return [{ pointer: `${at}/${second}`, code: 'conflicting-input', detail }]
  return given === 0 && needed === true ? [{ pointer: `${at}/${first}`, code: 'missing-input', detail }] : []
}

/** @returns every condition that a request which fits its schema does not keep */
export function unmetConditions(schema: JsonSchema, value: unknown, at = ''): readonly ProblemError[] {
  if (typeof value !== 'object' || value === null) return []
  const readings = branchesOf(schema)
  if (Array.isArray(value)) {
    const items = readings.flatMap(({ items: each }) => (each === undefined ? [] : [each]))
    return value.flatMap((each, index) => items.flatMap(item => unmetConditions(item, each, `${at}/${index}`)))
  }
  const members = value as Members
  const own = readings.flatMap(({ $id = '' }) => conditions[$id] ?? [])
  const here = own.flatMap(condition => broken(condition, members, at))
  const inner = Object.entries(members).flatMap(([name, each]) =>
    readings.flatMap(({ properties }) => {
      const next = properties?.[name]
      return next === undefined ? [] : unmetConditions(next, each, `${at}/${name}`)
    })
  )
  return [...new Map([...here, ...inner].map(fault => [`${fault.pointer} ${fault.detail}`, fault])).values()]
}
