/**
 * Lists longer than their schema takes, found before anything is validated: the validator collects the faults of every entry,
 * also of those beyond the bound, and each entry costs a copy of all that was collected before it.
 */
import type { ErrorObject } from 'ajv'
import { branchesOf, type JsonSchema } from '../../../contract/field/component.ts'

const escaped = (token: string) => token.replaceAll('~', '~0').replaceAll('/', '~1')

function tooMany(at: string, limit: number): ErrorObject {
  return { keyword: 'maxItems', instancePath: at, schemaPath: '#/maxItems', params: { limit } }
}

function ofList(list: readonly unknown[], schemas: readonly JsonSchema[], at: string): readonly ErrorObject[] {
  const lists = schemas.filter(({ items }) => items !== undefined)
  if (lists.length === 0) return []
  const limit = Math.max(...lists.map(({ maxItems = Infinity }) => maxItems))
  if (list.length > limit) return [tooMany(at, limit)]
  const entries = lists.flatMap(({ items = {} }) => branchesOf(items))
  return list.flatMap((entry, index) => longLists(entry, entries, `${at}/${index}`))
}

/** What the contract does not know is not looked into: the validator does not either. */
export function longLists(value: unknown, schemas: readonly JsonSchema[], at = ''): readonly ErrorObject[] {
  if (typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return ofList(value, schemas, at)
  return Object.entries(value).flatMap(([name, inner]) => {
    const next = schemas.flatMap(({ properties = {} }) => {
      const known = Object.hasOwn(properties, name) ? properties[name] : undefined
      return known === undefined ? [] : branchesOf(known)
    })
    return longLists(inner, next, `${at}/${escaped(name)}`)
  })
}
