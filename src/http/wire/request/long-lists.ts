/**
 * Lists longer than their schema takes, found before anything is validated: the validator collects the faults of every entry,
 * also of those beyond the bound, and each entry costs a copy of all that was collected before it.
 */
import type { ErrorObject } from 'ajv'
import { branchesOf, type JsonSchema } from '../../../contract/field/component.ts'

type Look = (value: unknown, at: string) => readonly ErrorObject[]

const none: readonly ErrorObject[] = []
const escaped = (token: string) => token.replaceAll('~', '~0').replaceAll('/', '~1')

function tooMany(at: string, limit: number): ErrorObject {
  return { keyword: 'maxItems', instancePath: at, schemaPath: '#/maxItems', params: { limit } }
}

function intoList(schemas: readonly JsonSchema[]): Look {
  const lists = schemas.filter(({ items }) => items !== undefined)
  if (lists.length === 0) return () => none
  const limit = Math.max(...lists.map(({ maxItems = Infinity }) => maxItems))
  const entry = longLists(lists.flatMap(({ items = {} }) => branchesOf(items)))
  return (value, at) => {
    const list = value as readonly unknown[]
    if (list.length > limit) return [tooMany(at, limit)]
    return list.flatMap((each, index) => (typeof each === 'object' ? entry(each, `${at}/${index}`) : none))
  }
}

function intoMembers(schemas: readonly JsonSchema[]): Look {
  const known = new Map<string, JsonSchema[]>()
  for (const { properties = {} } of schemas) {
    for (const [name, inner] of Object.entries(properties)) {
      known.set(name, [...(known.get(name) ?? []), ...branchesOf(inner)])
    }
  }
  const members = new Map([...known].map(([name, inner]) => [name, longLists(inner)]))
  return (value, at) => {
    let found = none
    for (const name of Object.keys(value as object)) {
      const inner = (value as Readonly<Record<string, unknown>>)[name]
      const look = typeof inner === 'object' ? members.get(name) : undefined
      const more = look?.(inner, `${at}/${escaped(name)}`) ?? none
      if (more.length > 0) found = [...found, ...more]
    }
    return found
  }
}

/**
 * What looks for them in a value of these schemas; what the contract does not know is not looked into, the validator does not
 * either. How to look is worked out once, when first needed.
 */
export function longLists(schemas: readonly JsonSchema[]): Look {
  let list: Look | undefined
  let members: Look | undefined
  return (value, at) => {
    if (typeof value !== 'object' || value === null) return none
    if (!Array.isArray(value)) {
      members ??= intoMembers(schemas)
      return members(value, at)
    }
    list ??= intoList(schemas)
    return list(value, at)
  }
}
