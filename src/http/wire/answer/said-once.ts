/** Two rooms may find the same danger at the same place: an answer says it once. */
import type { Caution } from '../../../domain/caution.ts'
import type { Outcome } from '../../../domain/outcome.ts'

const sameWords = (a: Caution, b: Caution) => a.code === b.code && a.at === b.at && a.message === b.message

/** Whole texts are made only where code, place and message are the same, which is seldom. */
const same = (a: Caution, b: Caution) => a === b || (sameWords(a, b) && JSON.stringify(a) === JSON.stringify(b))

export function saidOnce<Result>(outcome: Outcome<Result>): Outcome<Result> {
  const once: Caution[] = []
  for (const each of outcome.cautions) if (!once.some(other => same(other, each))) once.push(each)
  return once.length === outcome.cautions.length ? outcome : { ...outcome, cautions: once }
}
