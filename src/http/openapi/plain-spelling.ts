/** Spellings that every generator and validator reads alike, for those of JSON Schema 2020-12 that some of them stumble over. */
import { isObject, type Json, type JsonObject, reached } from './json-tree.ts'

/** A reference wrapped to carry a description needs no wrapping in OpenAPI 3.1. */
function unwrapped(schema: JsonObject): JsonObject {
  const { allOf, ...rest } = schema
  const [only] = Array.isArray(allOf) && allOf.length === 1 ? allOf : []
  return isObject(only) && typeof only.$ref === 'string' ? { ...only, ...rest } : schema
}

/** A tag is a list of one word: generators of unions do not look for `const`. */
function listedTag(schema: JsonObject): JsonObject {
  const { const: tag, ...rest } = schema
  if (tag === undefined || isObject(tag)) return schema
  return { type: typeof tag, ...rest, enum: [tag] }
}

function oneOfTypes(schema: JsonObject): JsonObject {
  const { type, ...rest } = schema
  return Array.isArray(type) ? { ...rest, oneOf: type.map((one: Json) => ({ type: one })) } : schema
}

/** In a query the words `true` and `false` are a boolean. */
function booleanWords(schema: JsonObject): JsonObject {
  const { enum: words, ...rest } = schema
  return Array.isArray(words) && words.join() === 'true,false' ? { ...rest, type: 'boolean' } : schema
}

export const plainSpelling = (schema: JsonObject): JsonObject => booleanWords(oneOfTypes(listedTag(unwrapped(schema))))

/** What only answers use is open: a field more breaks nobody. What a request uses stays closed: an unknown field is refused. */
export function openAnswers(schemas: JsonObject, requests: Json): JsonObject {
  const asked = reached(requests, schemas)
  return Object.fromEntries(
    Object.entries(schemas).map(([name, schema]) => {
      if (asked.has(name) || !isObject(schema) || schema.additionalProperties !== false) return [name, schema]
      const { additionalProperties: _closed, ...open } = schema
      return [name, open]
    })
  )
}
