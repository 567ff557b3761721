/** Every object of the contract that schemas lead to, each named one once. */
import { type JsonSchema, resolve } from '../../src/contract/field/component.ts'

export function* objectsOf(roots: readonly JsonSchema[], seen = new Set<string>()): Generator<JsonSchema> {
  for (const root of roots) {
    const schema = resolve(root)
    if (schema.$id !== undefined && seen.has(schema.$id)) continue
    if (schema.$id !== undefined) seen.add(schema.$id)
    yield schema
    const { properties = {}, oneOf = [], anyOf = [], items } = schema
    yield* objectsOf([...Object.values(properties), ...oneOf, ...anyOf, ...(items === undefined ? [] : [items])], seen)
  }
}
