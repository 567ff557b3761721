/** Each example of the contract worked out once a run, to full digits and explained; six digits are rounded from it. */
import type { Operation } from '../../src/http/wire/operation.ts'

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Body = any

const known = new Map<string, Body>()

/** In this process, not through the service: a worker thread would load the whole house again. */
export function worked({ path, answerText }: Operation, request: unknown): Body {
  const key = `${path} ${JSON.stringify(request)}`
  if (!known.has(key)) known.set(key, JSON.parse(answerText(request, { digits: 'full', basis: true })))
  return known.get(key)
}

/** As ECMAScript rounds, not as the service's own writer of digits does. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Number.isInteger(value) ? value : Number(value.toPrecision(6))
  if (Array.isArray(value)) return value.map(rounded)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, rounded(each)]))
}

/** The answer as it leaves when nobody asks for more digits or for the basis. */
export function plain(body: Body): Body {
  const { basis: _, ...rest } = body
  return rounded(rest)
}
