/** A search that is watched: lines over a socket, and an end when nobody watches any more. */
import { connect } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { searchDesigns } from '../../src/http/operations/systems/design-search.ts'
import { estateSearch, hatchbackSearch } from '../../src/http/operations/systems/design-search-examples.ts'
import { searchDivision } from '../../src/http/operations/systems/search-division.ts'
import { largeShelf } from '../support/large-shelf.ts'
import { listening } from '../support/service.ts'

const request = { ...hatchbackSearch, limits: {}, show: 1 }
let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening({ workers: 2 })
})
afterAll(() => service.app.close())

const ask = (body: unknown, accept: string) =>
  fetch(`${service.url}/v1/designs/search`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', accept },
    body: JSON.stringify(body)
  })

describe('a search as lines', () => {
  it('tells after each part how far it is, and last the very answer of a call without lines', async () => {
    const reply = await ask(request, 'application/x-ndjson')
    expect(reply.status).toBe(200)
    expect(reply.headers.get('content-type')).toBe('application/x-ndjson; charset=utf-8')
    const lines = (await reply.text()).trimEnd().split('\n')
    const progress = lines.slice(0, -1).map(line => JSON.parse(line).progress)
    expect(progress.map(({ parts, done, weighed }) => [parts, done, weighed])).toEqual([
      [3, 1, 2],
      [3, 2, 4],
      [3, 3, 6]
    ])
    const whole = await (await ask(request, 'application/json')).text()
    expect(lines.at(-1)).toBe(`{"answer":${whole}}`)
    expect(whole).toBe(searchDesigns.answerText(request, { digits: 'six', basis: false }))
  })

  it('is refused with a problem document where the request is wrong', async () => {
    const { price: _, ...unpriced } = estateSearch.amplifiers[0]
    const reply = await ask({ ...estateSearch, amplifiers: [unpriced] }, 'application/x-ndjson')
    expect([reply.status, reply.headers.get('content-type')]).toEqual([422, 'application/problem+json; charset=utf-8'])
    expect((await reply.json()).errors[0].pointer).toBe('/amplifiers/0/price')
  })

  it('stops working when the caller goes', async () => {
    const counted = async () => {
      const text = await (await fetch(`${service.url}/metrics`)).text()
      return Number(/results_total\{operation="searchDesigns",outcome="client-gone"\} (\d+)/.exec(text)?.[1] ?? 0)
    }
    const before = await counted()
    const body = JSON.stringify({ ...largeShelf(12, 20), show: 1 })
    const socket = connect(service.port, '127.0.0.1')
    socket.write(
      `POST /v1/designs/search HTTP/1.1\r\nhost: a\r\naccept: application/x-ndjson\r\ncontent-type: application/json\r\ncontent-length: ${Buffer.byteLength(body)}\r\n\r\n${body}`
    )
    const first = await new Promise<string>(resolve => socket.once('data', bytes => resolve(String(bytes))))
    expect(first).toMatch(/^HTTP\/1.1 200/)
    socket.destroy()
    await expect.poll(counted, { timeout: 20_000 }).toBe(before + 1)
    // no worker is left at it: a small search gets its turn at once
    const asked = performance.now()
    expect((await ask(request, 'application/json')).status).toBe(200)
    expect(performance.now() - asked).toBeLessThan(20_000)
  })
})

describe('a search over a large shelf', () => {
  it('is divided into parts of like size, which hold every driver once', () => {
    const parts = searchDivision.into(largeShelf(200, 100), false) as { readonly shard: unknown }[]
    expect(parts.map(({ shard }) => shard)).toEqual(Array.from({ length: 20 }, (_, index) => ({ index, of: 20 })))
    expect(searchDivision.into(request, false)).toHaveLength(1)
    expect(searchDivision.into({ ...largeShelf(200, 100), shard: { index: 0, of: 2 } }, true)).toHaveLength(1)
  })
})
