/** JSON in one spelling, so that equal values are equal bytes. */

/**
 * @param value  what JSON can hold
 * @source RFC 8785 (from memory): no blanks, names by their UTF-16 units, numbers and text as ECMAScript writes them
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${canonicalJson(inner)}`).join(',')}}`
}
