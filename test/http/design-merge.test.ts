/** A search in parts: joined, they are the very answer of one call; parts that do not belong together are refused with their place. */
import { beforeAll, describe, expect, it } from 'vitest'
import { estateSearch, hatchbackSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { searchDivision } from '../../src/http/operations/systems/search-division.ts'
import { fnv1a } from '../../src/numeric/text-hash.ts'
import { post, type Reply } from '../support/call.ts'

type Found = Reply['body']
const ok = async (path: string, request: unknown): Promise<Found> => {
  const { status, body } = await post(path, request)
  expect(status, JSON.stringify(body)).toBe(200)
  return body
}
const one = { ...estateSearch, drivers: hatchbackSearch.drivers, show: 3 }
/** Nothing keeps these: the least that gives way must be found across parts. */
const tight = { ...one, limits: { pricePerSystem: 320, massKg: 9 }, show: 2 }

async function partsOf(request: object, of: number): Promise<Found[]> {
  const parts: Found[] = []
  for (let index = 0; index < of; index++) {
    parts.push((await ok('/v1/designs/search', { ...request, shard: { index, of } })).result.part)
  }
  return parts
}

describe.each([
  ['with designs', one],
  ['with nothing left', tight]
])('a search %s', (_, request) => {
  let whole: Found
  beforeAll(async () => {
    whole = await ok('/v1/designs/search', request)
  })

  it.each([1, 2, 3, 5])('in %d parts is joined to the very answer of one call', async of => {
    const parts = await partsOf(request, of)
    const joined = await ok('/v1/designs/merge', { request, parts: parts.toReversed() })
    expect(JSON.stringify(joined)).toBe(JSON.stringify(whole))
  })
})

describe('a part that knows what others have found', () => {
  it.each([
    ['by balance', one],
    [
      'by balance without prices',
      { ...one, limits: {}, drivers: one.drivers.map(({ price: _, ...driver }) => driver) }
    ],
    ['by price', { ...one, rankBy: 'price', show: 2 }]
  ])('builds nothing that comes too late, and the join %s is the same', async (_, request) => {
    const whole = await ok('/v1/designs/search', request)
    const found: Found[] = []
    let spared = 0
    for (let index = 0; index < 3; index++) {
      const alone = { ...request, shard: { index, of: 3 } }
      const asked: Found = searchDivision.after(alone, found)
      expect(asked.shard.until === undefined).toBe(index === 0)
      const { part } = (await ok('/v1/designs/search', asked)).result
      spared += (await ok('/v1/designs/search', alone)).result.part.tried.length - part.tried.length
      found.push(part)
    }
    expect(spared).toBeGreaterThan(0)
    const joined = await ok('/v1/designs/merge', { request, parts: found })
    expect(JSON.stringify(joined)).toBe(JSON.stringify(whole))
  })
})

describe('a part', () => {
  it('holds the systems of its own drivers, and a fair share of them', async () => {
    const parts = await partsOf(one, 3)
    expect(parts.map(({ weighed }) => weighed)).toEqual([8, 8, 8])
    const drivers = parts.map(({ tried, rejected }) => [
      ...new Set([...tried, ...rejected].map(({ driver }: Found) => driver))
    ])
    expect(drivers.every(names => names.length === 1)).toBe(true)
    expect(new Set(drivers.flat()).size).toBe(3)
  })
})

describe('a join is refused', () => {
  let parts: Found[]
  beforeAll(async () => {
    parts = await partsOf(one, 2)
  })
  const refusal = async (given: unknown, request: object = one) => {
    const { status, body } = await post('/v1/designs/merge', { request, parts: given })
    return { status, code: body.code, pointers: body.errors?.map(({ pointer }: Found) => pointer) }
  }

  it('where a part is missing, is there twice, or is one of another number', async () => {
    const [first, second] = parts
    expect(await refusal([first])).toEqual({ status: 422, code: 'conflicting-input', pointers: ['/parts'] })
    expect(await refusal([first, second, first])).toMatchObject({ status: 422, pointers: ['/parts/2/shard/index'] })
    const other = { ...second, shard: { index: 1, of: 3 } }
    expect(await refusal([first, other])).toMatchObject({ status: 422, pointers: ['/parts/1/shard/of'] })
    expect(await refusal([])).toMatchObject({ status: 400, pointers: ['/parts'] })
  })

  it('where a part is of another search', async () => {
    const dearer = { ...one, limits: { ...one.limits, pricePerSystem: 800 } }
    expect(await refusal(parts, dearer)).toMatchObject({
      status: 422,
      pointers: ['/parts/0/fingerprint', '/parts/1/fingerprint']
    })
  })

  it('where a part was changed on the way', async () => {
    const [first, second] = parts
    const [system, ...rest] = first.tried
    const renamed = { ...first, tried: [{ ...system, driver: 'Nobody' }, ...rest] }
    expect(await refusal([renamed, second])).toMatchObject({ status: 422, pointers: ['/parts/0/tried/0/driver'] })
    const lost = { ...first, cautions: [] }
    const { status, pointers } = await refusal([lost, second])
    expect([status, pointers[0]]).toEqual([422, '/parts/0/tried/0/cautions/0'])
    const [caution, ...others] = first.cautions
    for (const sentence of ['{', '{"id":"nobody"}', 'null', '7']) {
      const changed = { ...first, cautions: [{ ...caution, sentence }, ...others] }
      expect(await refusal([changed, second])).toMatchObject({
        status: 422,
        pointers: ['/parts/0/cautions/0/sentence']
      })
    }
    for (const counts of [
      { weighed: 0 },
      { standing: 40_000 },
      { standing: 0, weighed: first.weighed - first.standing }
    ])
      expect(await refusal([{ ...first, ...counts }, second])).toMatchObject({
        status: 422,
        pointers: ['/parts/0/weighed']
      })
    expect(await refusal([{ ...first, weighed: -1 }, second])).toMatchObject({
      status: 400,
      pointers: ['/parts/0/weighed']
    })
  })

  it('for a fault of the search, at its place in the join', async () => {
    const { price: _, ...unpriced } = one.drivers[1]
    const request = { ...one, drivers: [one.drivers[0], unpriced] }
    expect(await refusal(parts, request)).toMatchObject({
      status: 422,
      code: 'missing-input',
      pointers: ['/request/drivers/1/price']
    })
  })
})

describe('the name of a request', () => {
  // Fowler, Noll and Vo give these for 64 bits (from memory)
  it('is FNV-1a', () => {
    expect([fnv1a(''), fnv1a('a'), fnv1a('foobar')]).toEqual([
      'cbf29ce484222325',
      'af63dc4c8601ec8c',
      '85944171f73967e8'
    ])
  })
})
