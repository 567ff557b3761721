/** How a search over a large shelf is divided into calls that a worker does within its time. */
import type { Static } from 'typebox'
import type { PartBody } from '../../../contract/systems/design-part.ts'
import type { SearchBody } from '../../../contract/systems/design-search.ts'
import { MOST_SHARDS } from '../../../contract/systems/words.ts'
import { kindsOf } from '../../../plan/designer/search-combinations.ts'
import { lastTurnShown } from '../../../plan/designer/systems/found-so-far.ts'
import { toSi } from '../../wire/request/to-si.ts'
import { searchDesigns } from './design-search.ts'

/** Systems one worker weighs in two or three seconds, so that other calls soon have a turn, on the machine of scripts/bench/search.ts. */
const SYSTEMS_A_PART = 2_000
/** Parts that somebody who watches sees at least, where there are as many drivers. */
const WATCHED_PARTS = 4

type Search = Static<typeof SearchBody>
export type FoundPart = Static<typeof PartBody>

function systemsOf({ drivers, driverCounts = [1, 2], amplifiers, ...asked }: Search): number {
  return drivers.length * driverCounts.length * amplifiers.length * kindsOf(asked).length
}

export const searchDivision = {
  operationId: searchDesigns.operationId,
  /** A part that was asked for as such stays whole: whoever asked has divided already. */
  into: (request: unknown, isWatched: boolean): readonly unknown[] => {
    const search = request as Search
    if (search.shard !== undefined) return [search]
    const wanted = Math.max(Math.ceil(systemsOf(search) / SYSTEMS_A_PART), isWatched ? WATCHED_PARTS : 1)
    const of = Math.min(wanted, search.drivers.length, MOST_SHARDS)
    return Array.from({ length: of }, (_, index) => ({ ...search, shard: { index, of } }))
  },
  /** A part that leaves out what comes too late to be shown, by what others have found. */
  after: (request: unknown, found: readonly FoundPart[]): unknown => {
    const search = request as Search
    const until = lastTurnShown(toSi(search), toSi(found))
    return until === undefined ? search : { ...search, shard: { ...search.shard, until } }
  }
} as const
