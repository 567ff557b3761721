/** Compressed answers are the same answers: unpacked by the platform's own zlib, tagged apart, told to caches. */
import { brotliDecompressSync, gunzipSync } from 'node:zlib'
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { acceptedEncoding } from '../../src/http/serving/representation/encoding.ts'
import { coils, quiet } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await buildApp(quiet)
})
afterAll(() => app.close())

const unpack = { br: brotliDecompressSync, gzip: gunzipSync } as const
const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers })
const query = `${coils.url}?driverCount=4&coilsPerDriver=2&coilOhm=4`

describe('RFC 9110 §12.5.3', () => {
  // The examples of the section (from memory), and what its rules say of others.
  for (const [header, encoding] of [
    [undefined, undefined],
    ['', undefined],
    ['compress, gzip', 'gzip'],
    ['*', 'br'],
    ['compress;q=0.5, gzip;q=1.0', 'gzip'],
    ['gzip;q=1.0, identity; q=0.5, *;q=0', 'gzip'],
    ['gzip;q=0.4, identity;q=0.9', undefined],
    ['gzip, deflate, br, zstd', 'br'],
    ['gzip;q=1.0, br;q=0.8', 'gzip'],
    ['br;q=0, gzip;q=0', undefined],
    ['br;q=0, *', 'gzip'],
    ['X-GZIP', 'gzip'],
    ['br;q=2', undefined]
  ] as const) {
    it(`${header ?? 'no header'}: ${encoding ?? 'as it is'}`, () => expect(acceptedEncoding(header)).toBe(encoding))
  }
})

describe('compression', () => {
  for (const encoding of ['br', 'gzip'] as const) {
    for (const url of [query, '/openapi.json', '/docs', '/docs/reference', '/v1/cautions', '/v1/reference/sources']) {
      it(`${url} as ${encoding}`, async () => {
        const plain = await get(url)
        const packed = await get(url, { 'accept-encoding': encoding })
        expect(packed.headers['content-encoding']).toBe(encoding)
        expect(packed.rawPayload.length).toBeLessThan(0.5 * plain.rawPayload.length)
        expect(unpack[encoding](packed.rawPayload).equals(plain.rawPayload)).toBe(true)
        for (const { headers } of [plain, packed]) expect(headers.vary).toMatch(/\bAccept-Encoding\b/)
        expect(String(packed.headers.vary).match(/accept-encoding/gi)).toHaveLength(1)
        expect(packed.headers.etag).toBe(String(plain.headers.etag).replace(/"$/, `-${encoding}"`))
      })

      it(`${url} is known by its tag as ${encoding}`, async () => {
        const { etag } = (await get(url, { 'accept-encoding': encoding })).headers
        const again = await get(url, { 'accept-encoding': encoding, 'if-none-match': String(etag) })
        expect([again.statusCode, again.body, again.headers.etag]).toEqual([304, '', etag])
        expect(again.headers.vary).toMatch(/\bAccept-Encoding\b/)
      })
    }

    it(`a result as ${encoding}`, async () => {
      const ask = (headers: Record<string, string>) =>
        app.inject({
          method: 'POST',
          url: coils.url,
          payload: { driverCount: 4, coilsPerDriver: 2, coilOhm: 4 },
          headers
        })
      const packed = await ask({ 'accept-encoding': encoding })
      expect(unpack[encoding](packed.rawPayload).toString()).toBe((await ask({})).body)
    })
  }

  it('leaves short answers, pictures of paper and streams as they are', async () => {
    const headers = { 'accept-encoding': 'br, gzip' }
    const short = await get('/v1/problems/overloaded', headers)
    expect(short.headers['content-encoding']).toBeUndefined()
    const calls = Array(20).fill({ operationId: 'wireCoils', request: coils.body })
    const lines = await app.inject({
      method: 'POST',
      url: '/v1/batches?form=ndjson',
      payload: { calls },
      headers
    })
    expect(lines.headers['content-type']).toMatch(/^application\/x-ndjson/)
    expect(lines.headers['content-encoding']).toBeUndefined()
  })

  it('keeps what a shared cache must know of origins', async () => {
    const open = await buildApp({ ...quiet, corsOrigins: ['https://shop.example', 'https://other.example'] })
    for (const accepted of ['br', 'identity']) {
      const { headers } = await open.inject({
        url: query,
        headers: { origin: 'https://shop.example', 'accept-encoding': accepted }
      })
      expect(String(headers.vary).split(', ').sort()).toEqual([
        'Accept',
        'Accept-Encoding',
        'Accept-Language',
        'Origin'
      ])
    }
    await open.close()
  })
})

describe('a form by name', () => {
  it('is the form by Accept, and depends on the address alone', async () => {
    const byName = await get(`${query}&form=svg`)
    const byAccept = await get(query, { accept: 'image/svg+xml' })
    expect(byName.headers['content-type']).toBe(byAccept.headers['content-type'])
    expect(byName.body).toBe(byAccept.body)
    expect(byName.headers.vary).not.toMatch(/\bAccept\b(?!-)/)
    expect((await get(`${query}&form=json`, { accept: 'image/svg+xml' })).headers['content-type']).toMatch(/json/)
  })

  for (const [url, parameter] of [
    [`${query}&form=wav`, 'form'],
    [`${query}&form=svg&form=svg`, 'form'],
    ['/v1/supply/fuses?form=json', 'form']
  ] as const) {
    it(`is refused by name: ${url}`, async () => {
      const refused = await get(url)
      expect(refused.statusCode).toBe(400)
      expect(refused.json().errors).toContainEqual(expect.objectContaining({ pointer: `/${parameter}`, parameter }))
    })
  }

  it('a fault of the query names its parameter', async () => {
    const refused = await app.inject({ method: 'POST', url: `${coils.url}?digits=seven`, payload: coils.body })
    expect(refused.json().errors).toEqual([expect.objectContaining({ pointer: '/digits', parameter: 'digits' })])
  })
})
