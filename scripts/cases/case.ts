/**
 * A worked case of one domain, and the adapter that puts it to the service. One file in this folder may serve several
 * domains: it exports `adapters`, and scripts/run-cases.ts finds it by itself.
 */
export interface WorkedCase {
  readonly id: string
  readonly domain: string
  readonly title: string
  readonly features?: readonly string[]
  // biome-ignore lint/suspicious/noExplicitAny: each domain has its own layout
  readonly [field: string]: any
}

/** One figure held against its expectation. */
export interface Deviation {
  readonly quantity: string
  readonly expected: unknown
  readonly actual: unknown
  /** |actual − expected| over what the case allows; above 1 the case fails. Infinity: missing, or not equal. */
  readonly share: number
}

export interface Call {
  /** Path of the operation, e.g. `/v1/enclosures/response`; the runner asks for full digits. */
  readonly path: string
  readonly request: unknown
}

export interface CaseAdapter {
  /** `domain` of the cases it understands. */
  readonly domain: string
  /** Undefined: the service does not offer what this case asks for; the runner reports it as skipped. */
  readonly call: (worked: WorkedCase) => Call | readonly Call[] | undefined
  /** @param answer  the body of the 200 answer, `{ result, cautions, ... }`; a list of them for a list of calls */
  // biome-ignore lint/suspicious/noExplicitAny: whatever the contract promises
  readonly compare: (worked: WorkedCase, answer: any) => readonly Deviation[]
}

interface Tolerance {
  readonly abs?: number
  readonly rel?: number
}

/** Pass if |actual − expected| ≤ abs + rel·|expected|. */
export function near(quantity: string, expected: number, actual: unknown, { abs = 0, rel = 0 }: Tolerance): Deviation {
  const allowed = abs + rel * Math.abs(expected)
  const distance = typeof actual === 'number' ? Math.abs(actual - expected) : Number.POSITIVE_INFINITY
  const share = distance === 0 ? 0 : distance / allowed
  return { quantity, expected, actual, share: Number.isNaN(share) ? Number.POSITIVE_INFINITY : share }
}

/** Must be the same. */
export function same(quantity: string, expected: unknown, actual: unknown): Deviation {
  const equal = JSON.stringify(expected) === JSON.stringify(actual)
  return { quantity, expected, actual, share: equal ? 0 : Number.POSITIVE_INFINITY }
}
