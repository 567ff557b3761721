/**
 * A small request spelled in query parameters: `return.kind=chassis&amplifiers.0.powerW=500` is
 * `{ "return": { "kind": "chassis" }, "amplifiers": [{ "powerW": 500 }] }`. What is built is held against the body's schema.
 */
import { branchesOf, type JsonSchema, resolve } from '../../../contract/field/component.ts'
import { numberFault } from './json-reader.ts'

export type QueryValues = Readonly<Record<string, string | readonly string[] | undefined>>

/** The schemas that may stand at a name inside any of the given ones. */
const inside = (schemas: readonly JsonSchema[], token: string): readonly JsonSchema[] =>
  schemas.flatMap(schema => {
    const next = /^\d{1,3}$/.test(token) && schema.items !== undefined ? schema.items : schema.properties?.[token]
    return next === undefined ? [] : branchesOf(next)
  })

/** JSON's own grammar of numbers: no `+5`, `05`, `1,5`, `0x10`, blank. */
const number = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?$/

function leaf(text: string, schemas: readonly JsonSchema[]): unknown {
  const types = schemas.map(({ type }) => type)
  if (
    (types.includes('number') || types.includes('integer')) &&
    text.length < 40 &&
    number.test(text) &&
    numberFault(text) === undefined
  ) {
    return Number(text)
  }
  if (types.includes('boolean') && (text === 'true' || text === 'false')) return text === 'true'
  return text
}

interface Tree {
  [token: string]: Tree | unknown
}

function place(tree: Tree, tokens: readonly string[], value: unknown): void {
  const [token = '', ...more] = tokens
  if (more.length === 0) {
    tree[token] = value
    return
  }
  const inner = Object.hasOwn(tree, token) ? tree[token] : undefined
  const branch = typeof inner === 'object' && inner !== null ? (inner as Tree) : (Object.create(null) as Tree)
  tree[token] = branch
  place(branch, more, value)
}

/** Objects whose names are 0, 1, 2 … become arrays where the schema has one. */
function arrays(value: unknown, schemas: readonly JsonSchema[]): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
  const entries = Object.entries(value).map(([token, inner]) => [token, arrays(inner, inside(schemas, token))] as const)
  const list = schemas.some(({ items }) => items !== undefined) && entries.every(([token], at) => token === String(at))
  return list ? entries.map(([, inner]) => inner) : Object.fromEntries(entries)
}

const MOST_LEVELS = 8

/** A repeated parameter stays a list and an unknown one stays text, so that the schema refuses them by name. */
export function requestFromQuery(schema: JsonSchema, query: QueryValues): unknown {
  const root = branchesOf(schema)
  const tree: Tree = Object.create(null)
  for (const [name, given] of Object.entries(query)) {
    const tokens = name.split('.').slice(0, MOST_LEVELS)
    const schemas = tokens.reduce(inside, root)
    place(tree, tokens, typeof given === 'string' ? leaf(given, schemas) : given)
  }
  return arrays(tree, root)
}

interface QueryField {
  readonly name: string
  readonly schema: JsonSchema
  readonly required: boolean
}

/** Every parameter a request can be spelled with, the first entry of a list standing for all. */
export function queryFields(schema: JsonSchema, prefix = '', required = true): readonly QueryField[] {
  const here = resolve(schema)
  const branches = here.oneOf ?? here.anyOf
  if (branches !== undefined) return branches.flatMap(branch => queryFields(branch, prefix, false))
  if (here.items !== undefined) return queryFields(here.items, `${prefix}0.`, required)
  if (here.properties === undefined) return [{ name: prefix.slice(0, -1), schema: here, required }]
  return Object.entries(here.properties).flatMap(([name, inner]) =>
    queryFields(inner, `${prefix}${name}.`, required && here.required?.includes(name) === true)
  )
}

/** A request as `name=value`, the inverse of {@link requestFromQuery}; nothing is escaped. */
export function spelledQuery(value: unknown, prefix = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [`${prefix.slice(0, -1)}=${String(value)}`]
  return Object.entries(value).flatMap(([name, inner]) => spelledQuery(inner, `${prefix}${name}.`))
}
