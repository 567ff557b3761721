/** What comes from strangers: long codes, half requests, odd headers, repeated fields, callers who leave. */

import { once } from 'node:events'
import { connect } from 'node:net'
import { Writable } from 'node:stream'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { csv } from '../../src/documents/draw/csv.ts'
import { plainOrder } from '../../src/documents/draw/plain-order.ts'
import { operations } from '../../src/http/operations.ts'
import { serviceLog } from '../../src/http/serving/log.ts'
import { post, testApp } from '../support/call.ts'
import { coils, exchange, listening } from '../support/service.ts'

const lines: string[] = []
const stream = new Writable({
  write(chunk, _encoding, done) {
    lines.push(String(chunk))
    done()
  }
})
let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening({
    corsOrigins: ['https://shop.example', 'https://other.example'],
    rateLimitMax: 50,
    log: serviceLog('info', stream)
  })
})
afterAll(() => service.app.close())

describe('a catalogue code that is far too long', () => {
  for (const list of ['problems', 'cautions']) {
    it(`404 in /v1/${list}, counted, limited, and one short line in the log`, async () => {
      for (const length of [101, 14_000]) {
        lines.length = 0
        const response = await fetch(`${service.url}/v1/${list}/${'a'.repeat(length)}`)
        expect(response.status).toBe(404)
        expect(await response.json()).toMatchObject({ code: 'not-found', status: 404 })
        expect(response.headers.get('ratelimit')).toMatch(/^"address";r=\d+/)
        const levels = lines.map(line => JSON.parse(line).level)
        expect(levels).toEqual([30])
        expect(lines.join('').length).toBeLessThan(500)
      }
      const metrics = await (await fetch(`${service.url}/metrics`)).text()
      expect(metrics).toContain(`route="/v1/${list}/:code",status="404"`)
    })
  }
})

describe('headers', () => {
  const problemOf = (answer: string) => JSON.parse(answer.slice(answer.indexOf('\r\n\r\n') + 4))

  for (const [what, hosts] of [
    ['no Host', ''],
    ['two Hosts', 'host: a\r\nhost: b\r\n']
  ] as const) {
    it(`${what}: 400 with a document and an id (RFC 9112 §3.2)`, async () => {
      const answer = await exchange(service.port, `GET /health/live HTTP/1.1\r\n${hosts}\r\n`)
      expect(answer).toMatch(/^HTTP\/1.1 400 /)
      expect(answer).toMatch(/content-type: application\/problem\+json/)
      const problem = problemOf(answer)
      expect(problem).toMatchObject({ status: 400, code: 'malformed-http' })
      expect(answer).toContain(problem.instance.split('/').pop())
    })
  }

  it('an HTTP/1.0 request needs no Host', async () => {
    expect(await exchange(service.port, 'GET /health/live HTTP/1.0\r\n\r\n')).toMatch(/^HTTP\/1.1 200 /)
  })

  it('an expectation nobody knows is passed over', async () => {
    const bytes = 'GET /health/live HTTP/1.1\r\nhost: a\r\nexpect: x\r\nconnection: close\r\n\r\n'
    expect(await exchange(service.port, bytes)).toMatch(/^HTTP\/1.1 200 /)
  })

  it('Vary names Origin and what is negotiated, each once, where forms are negotiated (RFC 9110 §12.5.5)', async () => {
    const query = `${service.url}${coils.url}?driverCount=2&coilsPerDriver=1&coilOhm=4`
    for (const origin of ['https://shop.example', 'https://other.example']) {
      const response = await fetch(query, { headers: { origin } })
      const vary = (response.headers.get('vary') ?? '').split(',').map(name => name.trim())
      expect(vary.toSorted()).toEqual(['Accept', 'Accept-Encoding', 'Accept-Language', 'Origin'])
      expect(response.headers.get('access-control-allow-origin')).toBe(origin)
    }
  })
})

describe('refusals', () => {
  it('a parameter that is given twice is said to be', async () => {
    const app = await testApp()
    for (const repeated of ['coilOhm', 'driverCount', 'digits']) {
      const query = 'driverCount=2&coilsPerDriver=1&coilOhm=4&digits=full'
      const again = new URLSearchParams(query).get(repeated)
      const { statusCode, body } = await app.inject({ url: `${coils.url}?${query}&${repeated}=${again}` })
      expect(statusCode).toBe(400)
      expect(JSON.parse(body).errors).toEqual([
        {
          pointer: `/${repeated}`,
          parameter: repeated,
          code: 'duplicate-name',
          detail: 'This parameter is given twice.'
        }
      ])
    }
  })

  it('an unknown kind is answered with the known ones', async () => {
    const { body } = await post('/v1/boxes/panels', {
      outer: { widthMm: 500, heightMm: 400, depthMm: 300 },
      thicknessMm: 18,
      port: { kind: 'oval' }
    })
    expect(body.errors).toEqual([
      {
        pointer: '/port/kind',
        code: 'unknown-value',
        detail: 'Must be one of round, slot.',
        bounds: { allowed: ['round', 'slot'] }
      }
    ])
  })
})

describe('a caller who leaves', () => {
  it('is counted as that, and is no fault of ours', async () => {
    lines.length = 0
    const heavy = operations.find(({ operationId }) => operationId === 'searchDesigns')
    const request = Object.values(heavy?.examples ?? {})[0]?.request
    const send = (url: string, value: unknown, accept: string) => {
      const text = JSON.stringify(value)
      const socket = connect(service.port, '127.0.0.1')
      socket.write(
        `POST ${url} HTTP/1.1\r\nhost: a\r\naccept: ${accept}\r\ncontent-type: application/json\r\ncontent-length: ${Buffer.byteLength(text)}\r\n\r\n${text}`
      )
      return socket
    }
    const calls = [{ operationId: 'searchDesigns', request }]
    const sockets = [
      send('/v1/designs/search', request, 'application/json'),
      send('/v1/batches', { calls }, 'application/json'),
      send('/v1/batches', { calls }, 'application/x-ndjson')
    ]
    const counted = async () => {
      const text = await (await fetch(`${service.url}/metrics`)).text()
      return Number(/results_total\{operation="searchDesigns",outcome="client-gone"\} (\d+)/.exec(text)?.[1] ?? 0)
    }
    await new Promise(resolve => setTimeout(resolve, 300))
    for (const socket of sockets) socket.destroy()
    await expect.poll(counted, { timeout: 20_000 }).toBe(3)
    const text = await (await fetch(`${service.url}/metrics`)).text()
    expect(text).not.toMatch(/outcome="out-of-time"/)
    expect(lines.filter(line => JSON.parse(line).level >= 50)).toEqual([])
  })
})

describe('closing', () => {
  it('does not wait for requests that never arrive whole', async () => {
    const { app, port } = await listening()
    const halves = [
      'GET /health/live HTTP/1.1\r\nHost:',
      'POST /v1/coils/wiring HTTP/1.1\r\nhost: a\r\ncontent-type: application/json\r\ncontent-length: 50\r\n\r\n{'
    ]
    const cut = halves.map(async bytes => {
      const socket = connect(port, '127.0.0.1', () => socket.write(bytes))
      await once(app.server, 'connection')
      return once(socket, 'close')
    })
    await new Promise(resolve => setTimeout(resolve, 300))
    // Left to itself the server waits for both for ever: closing ends its own check of slow senders.
    await app.close()
    expect(await Promise.all(cut)).toHaveLength(2)
  })
})

describe('signs that do not show', () => {
  it('turn nothing round in plain text', () => {
    expect(plainOrder('gain \u202e5.1\u202c and \u2067x\u2069')).toBe('gain 5.1 and x')
  })

  it('hide no formula from a spreadsheet, and a semicolon parts no cell', () => {
    const line = (text: string) => csv(['a'], [[text]]).split('\r\n')[1]
    for (const sign of ['=', '+', '-', '@', '\uff1d', '\uff0b', '\uff0d', '\uff20']) {
      expect(line(`${sign}1`)).toBe(`'${sign}1`)
      expect(line(`\u200b${sign}1`)).toBe(`'\u200b${sign}1`)
    }
    expect(line('\u202e=1')).toBe("'=1")
    expect(line(';=1+1')).toBe('";=1+1"')
    expect(line('a\tb')).toBe('"a\tb"')
    expect(line('12 inch \u2013 plain')).toBe('12 inch \u2013 plain')
  })
})
