import { describe, expect, it } from 'vitest'
import { defaultSettings, readSettings, settingTable } from '../../src/http/serving/settings.ts'

describe('settings', () => {
  it('come from the table where the environment says nothing, or says nothing in many words', () => {
    expect(defaultSettings()).toMatchObject({ port: 3000, rateLimitMax: 6000, trustProxy: false, corsOrigins: [] })
    expect(readSettings({ PORT: '', HOST: ' ' })).toEqual({ settings: defaultSettings() })
  })

  it('take what the environment says', () => {
    const read = readSettings({
      PORT: '8080',
      RATE_LIMIT_MAX: '0',
      TRUST_PROXY: '10.0.0.0/8, ::1',
      CORS_ORIGIN: 'https://shop.example,http://localhost:5173',
      API_KEYS_SHA256: `shop:${'a'.repeat(64)},shop:${'B'.repeat(64)}`,
      METRICS: 'off'
    })
    expect(read).toMatchObject({
      settings: {
        port: 8080,
        rateLimitMax: 0,
        trustProxy: ['10.0.0.0/8', '::1'],
        corsOrigins: ['https://shop.example', 'http://localhost:5173'],
        apiKeys: [
          { holder: 'shop', sha256: 'a'.repeat(64) },
          { holder: 'shop', sha256: 'b'.repeat(64) }
        ],
        metrics: false
      }
    })
  })

  it('take a Redis by its address, and never show what may hold a password', () => {
    const url = 'rediss://:secret@cache.example:6380/0'
    expect(readSettings({ RATE_LIMIT_REDIS_URL: url })).toMatchObject({ settings: { rateLimitRedis: url } })
    for (const wrong of ['http://:secret@cache.example', 'cache.example:6379', 'redis://', 'redis:///0']) {
      const fault = { variable: 'RATE_LIMIT_REDIS_URL', value: '(not shown)' }
      expect(readSettings({ RATE_LIMIT_REDIS_URL: wrong })).toMatchObject({ faults: [fault] })
    }
  })

  for (const [variable, value] of [
    ['PORT', '65536'],
    ['PORT', '-1'],
    ['PORT', '3000.5'],
    ['PORT', '0x50'],
    ['HOST', 'a b'],
    ['LOG_LEVEL', 'loud'],
    ['RATE_LIMIT_MAX', 'none'],
    ['TRUST_PROXY', 'true'],
    ['TRUST_PROXY', '999.1.1.1/99'],
    ['TRUST_PROXY', '10.0.0.0/33'],
    ['TRUST_PROXY', '10.0.0.0/'],
    ['TRUST_PROXY', 'fd00::/129'],
    ['TRUST_PROXY', 'loopback, 10.0.0'],
    ['WORKER_HEAP_MB', '8'],
    ['CORS_ORIGIN', 'shop.example'],
    ['CORS_ORIGIN', 'https://shop.example/path'],
    ['BODY_LIMIT_BYTES', '99999999'],
    ['METRICS', 'yes']
  ] as const) {
    it(`refuses ${variable}=${value}`, () =>
      expect(readSettings({ [variable]: value })).toMatchObject({ faults: [{ variable, value }] }))
  }

  it('takes addresses and networks of both families', () => {
    for (const value of ['10.0.0.0/32', '192.168.1.1', 'fd00::/128, loopback', '::1']) {
      expect(readSettings({ TRUST_PROXY: value })).toMatchObject({ settings: { trustProxy: value.split(', ') } })
    }
  })

  it('refuses one port for two servers, and names it', () => {
    expect(readSettings({ PORT: '8080', METRICS_PORT: '8080' })).toMatchObject({
      faults: [{ variable: 'METRICS_PORT', value: '8080' }]
    })
    expect(readSettings({ PORT: '0', METRICS_PORT: '0' })).toHaveProperty('settings')
  })

  it('names every wrong value at once, and never shows a key', () => {
    const read = readSettings({ PORT: 'x', API_KEYS_SHA256: 'my-secret-key' })
    expect(JSON.stringify(read)).not.toContain('my-secret-key')
    expect('faults' in read && read.faults.map(({ variable }) => variable)).toEqual(['PORT', 'API_KEYS_SHA256'])
  })

  it('has one variable a setting', () => {
    const variables = Object.values(settingTable).map(({ variable }) => variable)
    expect(new Set(variables).size).toBe(variables.length)
  })
})
