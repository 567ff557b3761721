/** GET forms: same answer as POST, cacheable, and refused where the query does not spell a request. */
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import type { JsonSchema } from '../../src/contract/field/component.ts'
import { operations } from '../../src/http/operations.ts'
import { byQuery } from '../../src/http/serving/operations/query-routes.ts'
import { requestFromQuery } from '../../src/http/wire/request/query-request.ts'
import { here } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await buildApp(here)
})
afterAll(() => app.close())

/** A request as query parameters: the inverse of what the service does. */
function spelled(value: unknown, prefix = ''): string[] {
  if (typeof value !== 'object' || value === null)
    return [`${prefix.slice(0, -1)}=${encodeURIComponent(String(value))}`]
  return Object.entries(value).flatMap(([name, inner]) => spelled(inner, `${prefix}${name}.`))
}

const path = '/v1/coils/wiring'
const query = 'driverCount=2&coilsPerDriver=1&coilOhm=4'
const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers })

describe('query forms', () => {
  for (const operation of operations.filter(({ operationId }) => byQuery.has(operationId))) {
    for (const [name, { request }] of Object.entries(operation.examples)) {
      it(`${operation.operationId} answers its example ${name} with the bytes of POST`, async () => {
        const url = `${operation.path}?${spelled(request).join('&')}`
        const found = await get(url)
        const posted = await app.inject({ method: 'POST', url: operation.path, payload: request as object })
        expect(found.statusCode, found.body).toBe(200)
        expect(found.body).toBe(posted.body)
        expect(
          requestFromQuery(operation.body as JsonSchema, Object.fromEntries(new URLSearchParams(url.split('?')[1])))
        ).toEqual(request)
      })
    }
  }

  it('answers 304 to a tag it gave, in a list, weakened or with the parameters in another order', async () => {
    const first = await get(`${path}?${query}`)
    const tag = String(first.headers.etag)
    expect(tag).toMatch(/^"[\w-]{27}"$/)
    expect(first.headers['cache-control']).toMatch(/^public, max-age=\d+/)
    const turned = `${path}?coilOhm=4&coilsPerDriver=1&driverCount=2`
    for (const known of [tag, `"other", ${tag}`, `W/${tag}`, '*']) {
      const again = await get(turned, { 'if-none-match': known })
      expect(again.statusCode, known).toBe(304)
      expect(again.body).toBe('')
      expect(again.headers.etag).toBe(tag)
    }
    expect((await get(turned, { 'if-none-match': '"other"' })).statusCode).toBe(200)
  })

  it('tags another input, precision or explanation differently', async () => {
    const tags = await Promise.all(
      ['', '&totalPowerW=800', '&digits=full', '&basis=true'].map(
        async more => (await get(`${path}?${query}${more}`)).headers.etag
      )
    )
    expect(new Set(tags).size).toBe(4)
  })

  it('says to HEAD what it says to GET, without the body', async () => {
    const head = await app.inject({ method: 'HEAD', url: `${path}?${query}` })
    const full = await get(`${path}?${query}`)
    expect(head.statusCode).toBe(200)
    expect(head.body).toBe('')
    expect(head.headers.etag).toBe(full.headers.etag)
    expect(head.headers['content-length']).toBe(full.headers['content-length'])
  })

  it('gives POST no tag and keeps no cache of it', async () => {
    const posted = await app.inject({
      method: 'POST',
      url: path,
      payload: { driverCount: 1, coilsPerDriver: 1, coilOhm: 4 }
    })
    expect(posted.headers.etag).toBeUndefined()
    expect(posted.headers['cache-control']).toBe('no-store')
  })

  // RFC 8259 §6 is the grammar of numbers; what other readers take for one is refused.
  for (const [odd, pointer] of [
    ['coilOhm=', '/coilOhm'],
    ['coilOhm=%20', '/coilOhm'],
    ['coilOhm=%2B4', '/coilOhm'],
    ['coilOhm=04', '/coilOhm'],
    ['coilOhm=4,5', '/coilOhm'],
    ['coilOhm=0x4', '/coilOhm'],
    ['coilOhm=4&coilOhm=5', '/coilOhm'],
    ['coilOhm=1e999', '/coilOhm'],
    ['coilOhm=-4', '/coilOhm'],
    ['coilOhm=4&lenghtMm=1', '/lenghtMm'],
    ['coilOhm=4&digits=seven', '/digits'],
    ['coilOhm=4&basis=1', '/basis'],
    ['coilOhm.x=4', '/coilOhm'],
    ['coilOhm=4&__proto__=1', '/__proto__'],
    ['coilOhm=4&constructor.prototype.x=1', '/constructor']
  ] as const) {
    it(`refuses ?${odd} with a pointer`, async () => {
      const refused = await get(`${path}?driverCount=2&coilsPerDriver=1&${odd}`)
      expect(refused.statusCode, refused.body).toBe(400)
      expect(refused.headers['cache-control']).toBe('no-store')
      expect(refused.headers.etag).toBeUndefined()
      expect(refused.json().errors.map((fault: { pointer: string }) => fault.pointer)).toContain(pointer)
    })
  }

  it('refuses what no design satisfies with a pointer into the request it spelled', async () => {
    const refused = await get(`${path}?driverCount=2&coilsPerDriver=1`)
    expect(refused.statusCode).toBe(422)
    expect(refused.json().errors).toEqual([expect.objectContaining({ pointer: '/coilOhm', code: 'missing-input' })])
  })
})
