/** Examples printed in the RFCs, held against what the service does. Each is from memory of the text unless it says otherwise. */
import { describe, expect, it } from 'vitest'
import { knownTag } from '../../src/http/serving/representation/etag.ts'
import { wirePath } from '../../src/http/wire/answer/wire-path.ts'
import { deprecationHeaders } from '../../src/http/wire/deprecation.ts'
import { schemaFaults } from '../../src/http/wire/request/schema-faults.ts'
import { post, testApp } from '../support/call.ts'

describe('RFC 9745 and RFC 8594', () => {
  const headers = deprecationHeaders({
    since: '2023-06-30T23:59:59Z',
    sunset: '2024-06-30T23:59:59Z',
    successor: '/v2/things'
  })

  it('Deprecation is the structured date of the example', () => expect(headers.deprecation).toBe('@1688169599'))
  it('Sunset is an HTTP date', () => expect(headers.sunset).toBe('Sun, 30 Jun 2024 23:59:59 GMT'))
  it('Link names the successor', () => expect(headers.link).toContain('</v2/things>; rel="successor-version"'))
})

describe('RFC 6901', () => {
  // §5: the names "a/b" and "m~n" are written /a~1b and /m~0n.
  for (const [name, pointer] of [
    ['a/b', '/a~1b'],
    ['m~n', '/m~0n'],
    ['', '/'],
    [' ', '/ '],
    ['c%d', '/c%d'],
    ['k"l', '/k"l'],
    ['~1', '/~01']
  ] as const) {
    it(`points at an unknown ${JSON.stringify(name)} with ${pointer}`, () => {
      const error = { instancePath: '', keyword: 'additionalProperties', params: { additionalProperty: name } }
      expect(schemaFaults([{ ...error, schemaPath: '' } as never])[0]?.pointer).toBe(pointer)
    })
  }

  it('points at the field that the domain names, in the public unit', () => {
    const schema = { properties: { rear: { properties: { netVolumeL: { type: 'number' } } } } }
    expect(wirePath(schema, 'rear.netVolumeM3')).toEqual({ pointer: '/rear/netVolumeL', perSi: 1000 })
  })
})

describe('RFC 9110 §13.1.2', () => {
  // Tags of §8.8.3: "xyzzy", W/"xyzzy"; a list and its weak comparison.
  for (const [header, known] of [
    ['"xyzzy"', true],
    ['W/"xyzzy"', true],
    ['"r2d2xxxx", "xyzzy", "c3piozzzz"', true],
    ['W/"r2d2xxxx", W/"xyzzy"', true],
    ['"c3piozzzz"', false],
    ['xyzzy', false],
    ['"xyzzy2"', false],
    ['', false]
  ] as const) {
    it(`${header || 'nothing'} ${known ? 'matches' : 'does not match'}`, () =>
      expect(knownTag(header, '"xyzzy"') !== undefined).toBe(known))
  }
})

describe('RFC 9457 §3', () => {
  it('a problem has the five members with their types, and its own extensions', async () => {
    const { body, type } = await post('/v1/coils/wiring', { driverCount: 2, coilsPerDriver: 1, coilOhm: 'x' })
    expect(type).toMatch(/^application\/problem\+json/)
    expect(body).toMatchObject({
      type: expect.stringMatching(/^\//),
      title: expect.any(String),
      status: 400,
      detail: expect.any(String),
      instance: expect.stringMatching(/^\//),
      code: 'invalid-request'
    })
  })
})

describe('RFC 9110 §15.5.6 and §10.2.1', () => {
  it('405 carries Allow, and what it lists is allowed', async () => {
    const app = await testApp()
    const { statusCode, headers } = await app.inject({ method: 'DELETE', url: '/v1/coils/wiring' })
    expect(statusCode).toBe(405)
    for (const method of String(headers.allow).split(', ')) {
      const { statusCode: status } = await app.inject({ method: method as 'GET', url: '/v1/coils/wiring' })
      expect([404, 405]).not.toContain(status)
    }
  })
})
