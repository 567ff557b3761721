/** Two rooms may find the same danger at the same place: an answer says it once. */
import type { Outcome } from '../../domain/outcome.ts'

export function saidOnce<Result>({ cautions, ...outcome }: Outcome<Result>): Outcome<Result> {
  const known = new Set<string>()
  const once = cautions.filter(each => {
    const key = JSON.stringify(each)
    return known.has(key) ? false : known.add(key)
  })
  return { ...outcome, cautions: once }
}
