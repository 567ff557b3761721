/** What parts of a search have found so far, for those that are still to come. */
import type { SearchPart } from '../../../contract/systems/design-part.ts'
import type { SearchRequest, SearchTurn } from '../../../contract/systems/design-search.ts'
import { assumptions } from '../../../domain/assume.ts'
import { questionOf } from './question.ts'
import { ranked, turnOf } from './rank.ts'

/**
 * The turn of the last design that would be shown if no better came: the join takes systems in turn until as many stand as are
 * shown, so it never comes to one after that.
 *
 * @returns none while fewer are found
 */
export function lastTurnShown(
  request: SearchRequest,
  parts: readonly Pick<SearchPart, 'tried'>[]
): SearchTurn | undefined {
  const question = questionOf(request, assumptions())
  const found = parts.flatMap(({ tried }) => tried).filter(({ figures }) => figures !== undefined)
  const last = ranked(found, question, ({ foreseen }) => foreseen)[question.show - 1]
  return last && turnOf(question, last.foreseen)
}
