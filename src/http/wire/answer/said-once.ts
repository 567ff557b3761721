/** Two rooms may find the same danger at the same place: an answer says it once. */
import type { Caution } from '../../../domain/caution.ts'
import type { Outcome } from '../../../domain/outcome.ts'

const sameWords = (a: Caution, b: Caution) => a.code === b.code && a.at === b.at && a.message === b.message

/** Whole texts are made only where code, place and message are the same, which is seldom. */
const same = (a: Caution, b: Caution) => a === b || (sameWords(a, b) && JSON.stringify(a) === JSON.stringify(b))

export function saidOnce<Result>({ cautions, ...outcome }: Outcome<Result>): Outcome<Result> {
  const once = cautions.filter((each, at) => cautions.findIndex(other => same(other, each)) === at)
  return { ...outcome, cautions: once }
}
