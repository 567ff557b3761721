/** The service says where its description is, and gives each schema of it alone. */
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { operations } from '../../src/http/operations.ts'
import { testApp } from '../support/call.ts'
import { committed } from '../support/contract-judge.ts'

const schema = async (name: string) => (await testApp()).inject(`/v1/schemas/${name}`)

describe('the service describes itself', () => {
  it('leads from the well-known place to resources that are there', async () => {
    const app = await testApp()
    const { headers, body } = await app.inject('/.well-known/api-catalog')
    expect(headers['content-type']).toMatch(/^application\/linkset\+json/)
    const { anchor: _, ...relations } = JSON.parse(body).linkset[0]
    const links = Object.values<readonly { href: string; type: string }[]>(relations).flat()
    expect(links.length).toBeGreaterThan(3)
    for (const { href, type } of links) {
      const { statusCode, headers: found } = await app.inject(href)
      expect(statusCode, href).toBe(200)
      expect(String(found['content-type'])).toContain(type)
    }
  })

  it('leads from a path that is none to the guide', async () => {
    const app = await testApp()
    const { statusCode, headers } = await app.inject('/v1')
    expect(statusCode).toBe(404)
    const [, href = ''] = /^<([^>]+)>; rel="service-doc"$/.exec(String(headers.link)) ?? []
    expect((await app.inject(href)).headers['content-type']).toMatch(/^text\/html/)
  })

  for (const { operationId, body, examples } of operations) {
    it(`gives the request of ${operationId} as one schema that takes its examples and no unknown field`, async () => {
      const { $id = '' } = body as { $id?: string }
      const { statusCode, body: text } = await schema($id)
      expect(statusCode).toBe(200)
      // A validator of its own, which knows nothing of the service or of OpenAPI.
      const valid = new Ajv2020({
        strict: true,
        strictRequired: false,
        strictTypes: false,
        keywords: ['x-known-values']
      }).compile(JSON.parse(text))
      for (const { request } of Object.values(examples)) {
        expect(valid(request), JSON.stringify(valid.errors)).toBe(true)
        expect(valid({ ...(request as object), lenghtMm: 1 })).toBe(false)
      }
    })
  }

  it('has every schema of the contract, with tag and 304, and no other', async () => {
    const app = await testApp()
    for (const name of Object.keys(committed.components.schemas)) {
      const { statusCode, body } = await schema(name)
      expect(statusCode, name).toBe(200)
      expect(body).not.toContain('#/components/')
    }
    const { headers } = await schema('PlanRequest')
    const again = await app.inject({ url: '/v1/schemas/PlanRequest', headers: { 'if-none-match': headers.etag } })
    expect(again.statusCode).toBe(304)
    for (const name of ['NoSuchThing', '__proto__', 'constructor', 'x'.repeat(200)]) {
      expect((await schema(name)).statusCode, name).toBe(404)
    }
  })
})
