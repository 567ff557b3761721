/** What the service refuses around a calculation it refuses in the caller's language, in every sentence that is shown. */

import type { FastifyInstance, InjectOptions } from 'fastify'
import { beforeAll, describe, expect, it } from 'vitest'
import { testApp } from '../support/call.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await testApp()
})

const post = (payload: string | Buffer, headers: Readonly<Record<string, string>> = {}): InjectOptions => ({
  method: 'POST',
  url: '/v1/coils/wiring',
  headers: { 'content-type': 'application/json', ...headers },
  payload
})
const wrongCall = JSON.stringify({ calls: [{ operationId: 'wireCoils', request: {} }] })
const many = JSON.stringify({ calls: Array(101).fill({ operationId: 'wireCoils', request: {} }) })

const refused: Readonly<Record<string, InjectOptions>> = {
  'no JSON': post('{"a":'),
  'an empty body': post(''),
  'no UTF-8': post(Buffer.from([0x22, 0xc3, 0x28, 0x22])),
  'another encoding': post('{}', { 'content-type': 'application/json; charset=latin1' }),
  'a compressed body': post('{}', { 'content-encoding': 'gzip' }),
  'another type': post('a', { 'content-type': 'text/plain' }),
  'too large a body': post(`"${'x'.repeat(300_000)}"`),
  'a name given twice': post('{"a":1,"a":2}'),
  'a forbidden name': post('{"__proto__":1}'),
  'half a character': post('{"a":"\\ud800"}'),
  'numbers out of range': post('{"a":1e999,"b":1e-999}'),
  'too deep': post('['.repeat(20) + ']'.repeat(20)),
  'too long a list': post(`{"a":[${'1,'.repeat(2000)}1]}`),
  'a form that is none': { ...post('{}'), url: '/v1/coils/wiring?form=pdf' },
  'a type that is none': post('{}', { accept: 'image/png' }),
  'a part that is none': { ...post('{}'), url: '/v1/plans?parts=sumary' },
  'a parameter given twice': { url: '/v1/coils/wiring?coilOhm=4&coilOhm=2' },
  'an unknown choice': { url: '/v1/coils/wiring?driverCount=1&coilsPerDriver=1&coilOhm=4&digits=9' },
  'no such path': { url: '/v1/nothing' },
  'no such method': { method: 'DELETE', url: '/v1/coils/wiring' },
  'a batch too long': { ...post(many), url: '/v1/batches' },
  'a call of a batch': { ...post(wrongCall), url: '/v1/batches' }
}

type Told = {
  readonly detail: string
  readonly title: string
  readonly errors?: readonly { readonly detail: string }[]
}

async function asked(request: InjectOptions, language: string) {
  const reply = await app.inject({ ...request, headers: { ...request.headers, 'accept-language': language } })
  const body = reply.json()
  const told: Told = body.items?.[0].problem ?? body
  return { reply, sentences: [told.title, told.detail, ...(told.errors ?? []).map(({ detail }) => detail)] }
}

describe('a refusal in German', () => {
  it.each(Object.entries(refused))('%s', async (_name, request) => {
    const english = await asked(request, 'en')
    const german = await asked(request, 'de')
    expect(german.reply.statusCode).toBe(english.reply.statusCode)
    expect(german.reply.headers['content-language']).toBe('de')
    expect(german.sentences).toHaveLength(english.sentences.length)
    for (const sentence of german.sentences) expect(english.sentences).not.toContain(sentence)
  })
})
