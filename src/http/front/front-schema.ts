/** What the contract says of a field of the form: its schema and its unit. */
import { branchesOf, type JsonSchema } from '../../contract/field/component.ts'
import { planSystem } from '../operations/systems/plans.ts'
import type { FrontField } from './front-fields.ts'

const inside = (schemas: readonly JsonSchema[], token: string): readonly JsonSchema[] =>
  schemas.flatMap(schema => {
    const next = schema.items !== undefined && /^\d+$/.test(token) ? schema.items : schema.properties?.[token]
    return next === undefined ? [] : branchesOf(next)
  })

/** The contract's schema of a field. */
export function schemaOf({ path }: FrontField): JsonSchema {
  const [found] = path.split('.').reduce(inside, branchesOf(planSystem.body))
  if (found === undefined) throw new TypeError(`the contract has no ${path}`)
  return found
}

/** The unit of a quantity, as the contract gives it at the end of its description; none of a pure number. */
export function unitOf(field: FrontField): string {
  const [, unit = '1'] = /\[([^\]]+)\]$/.exec(schemaOf(field).description ?? '') ?? []
  return unit === '1' || field.choices !== undefined ? '' : unit
}
