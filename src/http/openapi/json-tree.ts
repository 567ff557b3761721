/** A JSON tree and one way through it: every object is handed to a rewriter after its children. */

export type Json = string | number | boolean | null | readonly Json[] | JsonObject
export interface JsonObject {
  readonly [name: string]: Json
}

export function isObject(node: Json | undefined): node is JsonObject {
  return typeof node === 'object' && node !== null && !Array.isArray(node)
}

export function rewritten(node: Json, change: (object: JsonObject) => Json): Json {
  if (Array.isArray(node)) return node.map((item: Json) => rewritten(item, change))
  if (!isObject(node)) return node
  return change(
    Object.fromEntries(Object.entries(node).map(([name, inner]): [string, Json] => [name, rewritten(inner, change)]))
  )
}

/** Names of the components of a kind that a tree refers to, directly. */
function referred(node: Json): ReadonlySet<string> {
  const names = new Set<string>()
  rewritten(node, object => {
    if (typeof object.$ref === 'string') names.add(object.$ref.split('/').pop() ?? '')
    return object
  })
  return names
}

/** Names of the schemas that a part of the document leads to. */
export function reached(from: Json, schemas: JsonObject): ReadonlySet<string> {
  const found = new Set<string>()
  let next = [...referred(from)]
  while (next.length > 0) {
    for (const name of next) found.add(name)
    next = next.flatMap(name => [...referred(schemas[name] ?? null)]).filter(name => !found.has(name))
  }
  return found
}
