/** The name of a schema, or of the one it is a reference to. */
export function schemaName(schema: object): string | undefined {
  const { $id, $ref } = schema as { readonly $id?: string; readonly $ref?: string }
  return $id ?? $ref?.replace(/#$/, '')
}

/** What the check of a schema is found by. */
export const schemaKey = (schema: object): string => schemaName(schema) ?? JSON.stringify(schema)
