/** JSON in one spelling, so that equal values are equal bytes. */

/**
 * @param value  what JSON can hold
 * @source RFC 8785 (from memory): no blanks, names by their UTF-16 units, numbers and text as ECMAScript writes them
 */
export function canonicalJson(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  let text = ''
  if (Array.isArray(value)) {
    for (const item of value) text += text === '' ? canonicalJson(item) : `,${canonicalJson(item)}`
    return `[${text}]`
  }
  const members = value as Readonly<Record<string, unknown>>
  for (const name of Object.keys(members).sort()) {
    text += `${text === '' ? '' : ','}${JSON.stringify(name)}:${canonicalJson(members[name])}`
  }
  return `{${text}}`
}
