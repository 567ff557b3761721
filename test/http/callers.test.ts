/** Limits and keys. */
import { createHash } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import { afterEach, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { coils, quiet } from '../support/service.ts'

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex')

let app: FastifyInstance
afterEach(() => app.close())

const call = (headers: Record<string, string> = {}, remoteAddress = '192.0.2.7') =>
  app.inject({ method: 'POST', url: coils.url, headers, payload: coils.body, remoteAddress })

describe('rate limit', () => {
  it('answers 429 with Retry-After and the fields of the RateLimit draft, per address', async () => {
    app = await buildApp({ ...quiet, rateLimitMax: 2, rateLimitWindowS: 30 })
    const first = await call()
    expect(first.statusCode).toBe(200)
    expect(first.headers['ratelimit-policy']).toBe('"address";q=2;w=30')
    expect(first.headers.ratelimit).toMatch(/^"address";r=1;t=\d+$/)
    await call()
    const refused = await call()
    expect(refused.statusCode).toBe(429)
    expect(refused.json().code).toBe('too-many-requests')
    expect(Number(refused.headers['retry-after'])).toBeGreaterThan(0)
    expect((await call({}, '192.0.2.8')).statusCode).toBe(200)
    expect((await call({ 'x-forwarded-for': '203.0.113.1' })).statusCode, 'an untrusted forwarded address').toBe(429)
  })

  it('counts an IPv6 caller by its /64', async () => {
    app = await buildApp({ ...quiet, rateLimitMax: 1 })
    expect((await call({}, '2001:db8::1')).statusCode).toBe(200)
    expect((await call({}, '2001:db8::ffff')).statusCode).toBe(429)
    expect((await call({}, '2001:db8:0:1::1')).statusCode).toBe(200)
  })

  it('counts the address a trusted proxy forwards', async () => {
    app = await buildApp({ ...quiet, rateLimitMax: 1, trustProxy: 1 })
    expect((await call({ 'x-forwarded-for': '203.0.113.1' })).statusCode).toBe(200)
    expect((await call({ 'x-forwarded-for': '203.0.113.2' })).statusCode).toBe(200)
    expect((await call({ 'x-forwarded-for': '203.0.113.2' })).statusCode).toBe(429)
  })

  it('never limits health', async () => {
    app = await buildApp({ ...quiet, rateLimitMax: 1 })
    for (let n = 0; n < 5; n++) expect((await app.inject('/health/live')).statusCode).toBe(200)
  })
})

describe('API keys', () => {
  const apiKeys = [
    { holder: 'shop', sha256: sha256('old key') },
    { holder: 'shop', sha256: sha256('new key') },
    { holder: 'app', sha256: sha256('other key') }
  ]

  it('are asked for only where keys are in use', async () => {
    app = await buildApp(quiet)
    expect((await call()).statusCode).toBe(200)
  })

  it('open the calculations, the old one and the new one while they rotate', async () => {
    app = await buildApp({ ...quiet, apiKeys })
    for (const key of ['old key', 'new key', 'other key'])
      expect((await call({ 'x-api-key': key })).statusCode).toBe(200)
    for (const headers of [
      {},
      { 'x-api-key': 'wrong' },
      { 'x-api-key': '' },
      { 'x-api-key': apiKeys[0]?.sha256 ?? '' }
    ]) {
      const refused = await call(headers as Record<string, string>)
      expect(refused.statusCode).toBe(401)
      expect(refused.headers['www-authenticate']).toBeDefined()
      expect(refused.json().code).toBe('unauthorised')
    }
    expect((await app.inject('/v1/problems')).statusCode).toBe(200)
    expect((await app.inject('/health/ready')).statusCode).toBe(200)
  })

  it('count by holder, and guessing counts by address', async () => {
    app = await buildApp({ ...quiet, apiKeys, keyRateLimitMax: 2, rateLimitMax: 1 })
    expect((await call({ 'x-api-key': 'old key' })).statusCode).toBe(200)
    expect((await call({ 'x-api-key': 'new key' })).statusCode).toBe(200)
    expect((await call({ 'x-api-key': 'new key' })).statusCode).toBe(429)
    expect((await call({ 'x-api-key': 'other key' })).statusCode).toBe(200)
    expect((await call({ 'x-api-key': 'guess 1' })).statusCode).toBe(401)
    expect((await call({ 'x-api-key': 'guess 2' })).statusCode).toBe(429)
  })
})
