/** What two halves of a small search weighed and dropped, counted by hand: 2 drivers × 2 counts × 1 amplifier × 1 kind of box. */
import { describe, expect, it } from 'vitest'
import type { SearchRequest } from '../../../src/contract/systems/design-search.ts'
import { estateSearch } from '../../../src/http/operations/systems/design-search-examples.ts'
import { toSi } from '../../../src/http/wire/request/to-si.ts'
import { mergeDesigns, searchDesigns } from '../../../src/plan/designer/systems/search-designs.ts'

const request = toSi({
  ...estateSearch,
  drivers: estateSearch.drivers.slice(0, 2),
  amplifiers: estateSearch.amplifiers.slice(0, 1),
  driverCounts: [1, 2],
  kinds: ['closed'],
  show: 1
}) as unknown as SearchRequest

describe('a search in two halves', () => {
  const parts = [0, 1].flatMap(index => searchDesigns({ ...request, shard: { index, of: 2 } }).result.part ?? [])

  it('weighs what the halves weighed, and drops what does not stand', () => {
    expect(parts.map(({ weighed }) => weighed)).toEqual([2, 2])
    const { weighed, rankedCount, rejectedCount } = mergeDesigns({ request, parts }).result
    expect([weighed, rankedCount + rejectedCount]).toEqual([4, 4])
  })
})
