/** A short name for a text; no seal against forgery. */

const PRIME = 0x100000001b3n
const START = 0xcbf29ce484222325n
const MASK = 0xffffffffffffffffn

/**
 * FNV-1a of 64 bits over the bytes of the text in UTF-8.
 *
 * @source Fowler, Noll and Vo, the FNV hash (from memory)
 * @check  '' → cbf29ce484222325, 'a' → af63dc4c8601ec8c
 */
export function fnv1a(text: string): string {
  let hash = START
  for (const byte of new TextEncoder().encode(text)) hash = ((hash ^ BigInt(byte)) * PRIME) & MASK
  return hash.toString(16).padStart(16, '0')
}
