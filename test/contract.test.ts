/** openapi.yaml, the routes and the catalogues say the same, and every example is what the service answers. */
import { readFileSync } from 'node:fs'
import { Validator } from '@seriousme/openapi-schema-validator'
import { describe, expect, it } from 'vitest'
import { operations } from '../src/http/operations.ts'
import { version } from '../src/http/wire/version.ts'
import { post, testApp } from './support/call.ts'
import { committed, contractFaults } from './support/contract-judge.ts'

const root = new URL('..', import.meta.url)

describe('contract', () => {
  it('is committed as the code says', async () => {
    const app = await testApp()
    await app.ready()
    const { yaml } = await app.contract()
    expect(readFileSync(new URL('openapi.yaml', root), 'utf8') === yaml, 'run npm run openapi').toBe(true)
  })

  it('is an OpenAPI 3.1 document by the published schema of such documents', async () => {
    expect(await new Validator().validate(structuredClone(committed))).toMatchObject({ valid: true })
  })

  it('carries the version of the package', () => {
    expect(JSON.parse(readFileSync(new URL('package.json', root), 'utf8')).version).toBe(version)
  })

  for (const { path, operationId, examples } of operations) {
    for (const [name, { request }] of Object.entries(examples)) {
      it(`${operationId} answers its example ${name} as the contract shows`, async () => {
        const { status, body } = await post(path, request)
        expect(status, JSON.stringify(body)).toBe(200)
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        expect(body).toEqual(committed.paths[path].post.responses[200].content['application/json'].examples[name].value)
      })
    }

    it(`${operationId} refuses an unknown field by name, as the contract describes refusals`, async () => {
      const [example] = Object.values(examples)
      const { status, type, body } = await post(path, { ...(example?.request as object), lenghtMm: 1 })
      expect(status).toBe(400)
      expect(type).toMatch(/^application\/problem\+json/)
      expect(body.errors).toContainEqual(expect.objectContaining({ pointer: '/lenghtMm', code: 'unknown-field' }))
      expect(contractFaults(path, 400, 'application/problem+json', body)).toEqual([])
    })
  }
})
