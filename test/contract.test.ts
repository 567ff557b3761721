/** openapi.yaml and the routes say the same; `basis.test.ts` works the examples out, `contract-served.test.ts` serves them all. */
import { readFileSync } from 'node:fs'
import { Validator } from '@seriousme/openapi-schema-validator'
import { describe, expect, it } from 'vitest'
import { operations } from '../src/http/operations.ts'
import { contractDocument } from '../src/http/serving/contract-document.ts'
import type { Operation } from '../src/http/wire/operation.ts'
import { version } from '../src/http/wire/version.ts'
import { post, testApp } from './support/call.ts'
import { committed, contractFaults } from './support/contract-judge.ts'

const root = new URL('..', import.meta.url)

describe('contract', () => {
  it('is committed as the code says, its examples apart', async () => {
    const app = await testApp()
    await app.ready()
    const shown = (operation: Operation, request: unknown) => {
      const [name] = Object.entries(operation.examples).find(([, example]) => example.request === request) ?? []
      const { examples } = committed.paths[operation.path].post.responses[200].content['application/json']
      return Promise.resolve(JSON.stringify(examples[name ?? ''].value))
    }
    const document = await contractDocument(JSON.parse(JSON.stringify(app.swagger())), shown)
    expect(document).toEqual(committed)
  })

  it('is an OpenAPI 3.1 document by the published schema of such documents', async () => {
    expect(await new Validator().validate(structuredClone(committed))).toMatchObject({ valid: true })
  })

  it('carries the version of the package', () => {
    expect(JSON.parse(readFileSync(new URL('package.json', root), 'utf8')).version).toBe(version)
  })

  for (const { path, operationId, examples, heavy = false } of operations) {
    for (const [name, { request }] of heavy ? [] : Object.entries(examples)) {
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
