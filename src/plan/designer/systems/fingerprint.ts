/** A short name of a request, by which its parts know each other again; no seal against forgery. */
import type { SearchRequest } from '../../../contract/systems/design-search.ts'
import { sixDigitsThroughout } from '../../../numeric/six-digits.ts'
import { fnv1a } from '../../../numeric/text-hash.ts'

/** Members by name, so that the order in which they were written does not count. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted)
  if (typeof value !== 'object' || value === null) return value
  const members = Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1))
  return Object.fromEntries(members.map(([name, inner]) => [name, sorted(inner)]))
}

export function fingerprintOf({ shard: _, ...request }: SearchRequest): string {
  return fnv1a(JSON.stringify(sorted(sixDigitsThroughout(request))))
}
