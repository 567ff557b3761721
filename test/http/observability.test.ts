import { Writable } from 'node:stream'
import { afterEach, describe, expect, it } from 'vitest'
import { serviceLog } from '../../src/http/serving/log.ts'
import { coils, listening } from '../support/service.ts'

let service: Awaited<ReturnType<typeof listening>>
afterEach(() => service.app.close())

describe('observability', () => {
  it('counts requests, results and cautions, and knows queue and loop', async () => {
    service = await listening()
    await service.app.inject({ method: 'POST', url: coils.url, payload: coils.body })
    await service.app.inject({ method: 'POST', url: coils.url, payload: {} })
    const response = await fetch(`${service.url}/metrics`)
    const text = await response.text()
    expect(response.headers.get('content-type')).toMatch(/^text\/plain; version=0\.0\.4/)
    expect(text).toMatch(/cabinbass_request_seconds_count\{method="POST",route="\/v1\/coils\/wiring",status="200"\} 1/)
    expect(text).toMatch(/cabinbass_request_seconds_count\{method="POST",route="\/v1\/coils\/wiring",status="400"\} 1/)
    expect(text).toMatch(/cabinbass_results_total\{operation="wireCoils",outcome="answered"\} 1/)
    expect(text).toMatch(/cabinbass_work_waiting 0/)
    expect(text).toMatch(/cabinbass_nodejs_eventloop_lag_p99_seconds [\d.]+/)
  })

  it('can be switched off', async () => {
    service = await listening({ metrics: false })
    expect((await fetch(`${service.url}/metrics`)).status).toBe(404)
  })

  it('logs one line a request with its id, and neither body nor query nor key', async () => {
    const lines: string[] = []
    const stream = new Writable({
      write(chunk, _encoding, done) {
        lines.push(String(chunk))
        done()
      }
    })
    service = await listening({ log: serviceLog('info', stream) })
    lines.length = 0
    const headers = { 'x-api-key': 'secret-key', 'x-request-id': 'basket-4711' }
    const payload = { ...coils.body, coilOhm: 3.21987 }
    // Through a socket: what injects a request keeps headers elsewhere.
    const answer = await fetch(`${service.url}${coils.url}?digits=full`, {
      method: 'POST',
      headers: { ...headers, 'content-type': 'application/json', 'accept-encoding': 'identity' },
      body: JSON.stringify(payload)
    })
    const { byteLength } = await answer.arrayBuffer()
    await service.app.inject({ method: 'POST', url: coils.url, headers, payload: '{"secret body"' })
    await service.app.inject({ url: '/health/live' })
    expect(lines).toHaveLength(2)
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({
      reqId: 'basket-4711',
      route: coils.url,
      status: 200,
      method: 'POST',
      bytes: byteLength
    })
    expect(lines.join('')).not.toMatch(/secret|3\.21987|digits/)
  })
})
