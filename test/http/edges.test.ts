/** The edges of HTTP: each is a problem document (RFC 9457) of the right status, never a 500. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { coils, exchange, here, listening } from '../support/service.ts'

let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening({ ...here, corsOrigins: ['https://shop.example'] })
})
afterAll(() => service.app.close())

const json = { 'content-type': 'application/json' }
const body = JSON.stringify(coils.body)
const send = (method: string, path = coils.url, headers: Record<string, string> = json, text: string | null = body) =>
  fetch(service.url + path, { method, headers, body: text })

async function expectProblem(response: Response, status: number, code: string) {
  expect(response.status).toBe(status)
  expect(response.headers.get('content-type')).toMatch(/^application\/problem\+json/)
  expect(response.headers.get('cache-control')).toBe('no-store')
  const problem = (await response.json()) as { instance: string; detail: string }
  expect(problem).toMatchObject({ type: `/v1/problems/${code}`, status, code })
  expect(problem.instance).toBe(`/requests/${response.headers.get('x-request-id')}`)
  return problem
}

describe('edges', () => {
  for (const method of ['GET', 'PUT', 'PATCH', 'DELETE']) {
    it(`405 for ${method}, with the list of methods`, async () => {
      const response = await fetch(service.url + coils.url.replace('coils/wiring', 'boxes/nothing'), { method })
      await expectProblem(response, 404, 'not-found')
      if (method === 'GET') return
      const refused = await fetch(service.url + coils.url, { method })
      await expectProblem(refused, 405, 'method-not-allowed')
      expect(refused.headers.get('allow')).toMatch(/\bPOST\b/)
    })
  }

  it('OPTIONS lists the methods', async () => {
    const app = await buildApp(here)
    const response = await app.inject({ method: 'OPTIONS', url: coils.url })
    expect(response.statusCode).toBe(204)
    expect(response.headers.allow).toMatch(/\bPOST\b/)
  })

  for (const type of [
    'text/plain',
    'application/xml',
    'application/vnd.x+json',
    'application/json; charset=latin1',
    'application/jsonx'
  ]) {
    it(`415 for ${type}`, async () => {
      const response = await send('POST', coils.url, { 'content-type': type })
      await expectProblem(response, 415, 'unsupported-media-type')
      expect(response.headers.get('accept-post')).toBe('application/json')
    })
  }

  it('415 for a compressed body', async () =>
    expectProblem(
      await send('POST', coils.url, { ...json, 'content-encoding': 'gzip' }),
      415,
      'unsupported-media-type'
    ))

  // Forms of Content-Type that let a body past validation in older frameworks.
  for (const type of ['application/json\t; charset=utf-8', 'application/json;', 'APPLICATION/JSON']) {
    it(`validates a body sent as ${JSON.stringify(type)}`, async () => {
      const { status } = await send('POST', coils.url, { 'content-type': type }, '{"lenghtMm":1}')
      expect([400, 415]).toContain(status)
    })
  }

  it('413 for a body over the limit', async () =>
    expectProblem(await send('POST', coils.url, json, `{"a":"${'x'.repeat(300_000)}"}`), 413, 'body-too-large'))

  it('400 for an empty body, for half a body, and for bytes that are no UTF-8', async () => {
    await expectProblem(await send('POST', coils.url, json, ''), 400, 'unreadable-body')
    await expectProblem(await send('POST', coils.url, json, '{"driverCount":'), 400, 'unreadable-body')
    const bytes = Uint8Array.from([0x7b, 0x22, 0xff, 0xfe, 0x22, 0x3a, 0x31, 0x7d])
    const response = await fetch(service.url + coils.url, { method: 'POST', headers: json, body: bytes })
    await expectProblem(response, 400, 'unreadable-body')
  })

  it('406 where no form will do, and says which there are', async () => {
    const problem = await expectProblem(
      await send('POST', coils.url, { ...json, accept: 'image/png' }),
      406,
      'not-acceptable'
    )
    expect(problem.detail).toContain('application/json')
  })

  it('404 for a path that cannot be decoded, with the id in the header', async () =>
    expectProblem(await fetch(`${service.url}/%zz`), 404, 'not-found'))

  it('takes over a request id of the right form and makes one otherwise', async () => {
    const good = await send('POST', coils.url, { ...json, 'x-request-id': 'basket-4711' })
    expect(good.headers.get('x-request-id')).toBe('basket-4711')
    const bad = await send('POST', coils.url, { ...json, 'x-request-id': 'a b' })
    expect(bad.headers.get('x-request-id')).toMatch(/^[\da-f-]{36}$/)
  })

  it('lets a configured origin read answers and refusals, and no other', async () => {
    const from = (origin: string, text: string) => send('POST', coils.url, { ...json, origin }, text)
    for (const text of [body, '{']) {
      const allowed = await from('https://shop.example', text)
      expect(allowed.headers.get('access-control-allow-origin')).toBe('https://shop.example')
      expect(allowed.headers.get('access-control-expose-headers')).toContain('Retry-After')
      const other = await from('https://other.example', text)
      expect(other.headers.get('access-control-allow-origin')).not.toBe('https://other.example')
    }
    const preflight = await fetch(service.url + coils.url, {
      method: 'OPTIONS',
      headers: { origin: 'https://shop.example', 'access-control-request-method': 'POST' }
    })
    expect(preflight.status).toBe(204)
    expect(preflight.headers.get('access-control-allow-methods')).toContain('POST')
  })

  for (const [what, bytes, status] of [
    ['garbage', 'garbage\r\n\r\n', 400],
    ['two lengths', 'POST / HTTP/1.1\r\nhost: a\r\ncontent-length: 2\r\ncontent-length: 3\r\n\r\n{}x', 400],
    ['a header of 100 KB', `GET / HTTP/1.1\r\nhost: a\r\nx: ${'a'.repeat(100_000)}\r\n\r\n`, 431]
  ] as const) {
    it(`answers ${what} on the socket with a problem`, async () => {
      const answer = await exchange(service.port, bytes)
      expect(answer).toMatch(new RegExp(`^HTTP/1.1 ${status} `))
      expect(answer).toMatch(/content-type: application\/problem\+json/)
      expect(JSON.parse(answer.slice(answer.indexOf('\r\n\r\n') + 4)).status).toBe(status)
    })
  }

  it('sends the headers that tie a browser down', async () => {
    const { headers } = await send('POST')
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('content-security-policy')).toContain("default-src 'none'")
    expect(headers.get('x-frame-options')).toBe('DENY')
    expect(headers.get('set-cookie')).toBeNull()
    expect(headers.get('x-powered-by')).toBeNull()
  })
})
