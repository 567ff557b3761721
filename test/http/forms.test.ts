/** Every other form a result has, chosen by Accept, in the type it says, the same bytes each time. */
import type { FastifyInstance } from 'fastify'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { operations } from '../../src/http/operations.ts'
import { coils, quiet } from '../support/service.ts'

let app: FastifyInstance
beforeAll(async () => {
  app = await buildApp(quiet)
})
afterAll(() => app.close())

const ask = (url: string, payload: unknown, accept: string) =>
  app.inject({ method: 'POST', url, payload: payload as object, headers: { accept } })

/** How a file of the type begins. */
const signatures: Readonly<Record<string, RegExp>> = {
  'application/pdf': /^%PDF-1\.\d/,
  'image/svg+xml': /^(<\?xml[^>]*>\s*)?<svg /,
  'text/html': /^<!doctype html>/i,
  'image/vnd.dxf': /^\s*(999|0)\r?\n/
}

describe('forms', () => {
  it('a resource with JSON alone does not vary', async () => {
    const plain = operations.find(({ forms, heavy }) => forms.length === 0 && heavy !== true)
    const request = Object.values(plain?.examples ?? {})[0]?.request
    const { headers, statusCode } = await ask(plain?.path ?? '', request, '*/*')
    expect(statusCode).toBe(200)
    expect(headers.vary ?? '').not.toMatch(/\baccept\b(?!-)/i)
    expect((await ask(plain?.path ?? '', request, 'text/html')).statusCode).toBe(406)
  })

  it('a drawing can stand in a page by its address', async () => {
    const browserImage = 'image/avif,image/webp,image/apng,image/svg+xml,image/*,*/*;q=0.8'
    const url = `${coils.url}?driverCount=2&coilsPerDriver=1&coilOhm=4`
    const image = await app.inject({ url, headers: { accept: browserImage } })
    expect(image.headers['content-type']).toMatch(/^image\/svg\+xml/)
    expect(image.headers['cross-origin-resource-policy']).toBe('cross-origin')
    const json = await app.inject({ url })
    expect(json.headers['content-type']).toMatch(/^application\/json/)
    expect(json.headers.etag).not.toBe(image.headers.etag)
    const again = await app.inject({
      url,
      headers: { accept: browserImage, 'if-none-match': String(image.headers.etag) }
    })
    expect(again.statusCode).toBe(304)
  })

  // Parts of a search are worked on at once: which ends first, and so tells its progress first, is the machine's affair.
  const hasProgress = (mediaType: string) => mediaType === 'application/x-ndjson'
  const lasting = (mediaType: string, body: string) =>
    hasProgress(mediaType) ? body.split('\n').filter(line => !line.startsWith('{"progress"')) : [body]
  for (const { path, operationId, examples, forms } of operations.filter(operation => operation.forms.length > 0)) {
    const request = Object.values(examples)[0]?.request
    it(`${operationId} is JSON for who does not care, and refuses what it has not`, async () => {
      for (const accept of ['*/*', 'application/*, text/html;q=0.1', 'application/json; charset=utf-8']) {
        const { headers } = await ask(path, request, accept)
        expect(headers['content-type']).toMatch(/^application\/json/)
        expect(headers.vary).toMatch(/\bAccept\b/)
      }
      const refused = await ask(path, request, 'audio/wav')
      expect(refused.statusCode).toBe(406)
      for (const { mediaType } of forms) expect(refused.json().detail).toContain(mediaType)
    })

    for (const { mediaType } of forms) {
      it(`${operationId} comes as ${mediaType}, the same each time`, async () => {
        const accept = `application/json;q=0.5, ${mediaType}`
        const first = await ask(path, request, accept)
        expect(first.statusCode, first.body.slice(0, 300)).toBe(200)
        expect(String(first.headers['content-type']).split(';')[0]).toBe(mediaType)
        expect(first.headers['x-content-type-options']).toBe('nosniff')
        expect(first.rawPayload.length).toBeGreaterThan(200)
        expect(first.body).toMatch(signatures[mediaType] ?? /^/)
        const second = await ask(path, request, accept)
        expect(lasting(mediaType, second.body)).toEqual(lasting(mediaType, first.body))
        if (!hasProgress(mediaType)) expect(second.rawPayload.equals(first.rawPayload)).toBe(true)
      })
    }

    it(`${operationId} refuses a wrong request as a problem, whatever form was asked for`, async () => {
      const { statusCode, headers } = await ask(path, { lenghtMm: 1 }, forms[0]?.mediaType ?? '')
      expect(statusCode).toBe(400)
      expect(headers['content-type']).toMatch(/^application\/problem\+json/)
    })
  }
})
