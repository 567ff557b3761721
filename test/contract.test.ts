/** openapi.yaml and the routes say the same; `basis.test.ts` works the examples out, `contract-served.test.ts` serves them all. */
import { readFileSync } from 'node:fs'
import { Validator } from '@seriousme/openapi-schema-validator'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { namedComponents } from '../src/contract/field/component.ts'
import { examplesPath, shownAnswer } from '../src/http/openapi/contract-document.ts'
import { operations } from '../src/http/operations.ts'
import { version } from '../src/http/wire/answer/version.ts'
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

  it('is made of schemas that the published schema of schemas takes', () => {
    const judge = new Ajv2020({ strict: false, validateFormats: false })
    for (const schema of namedComponents()) expect(judge.validateSchema(schema), judge.errorsText()).toBe(true)
  })

  it('is short enough to be read, by a person and by every tool', () => {
    const text = readFileSync(new URL('openapi.yaml', root), 'utf8')
    expect(Buffer.byteLength(text)).toBeLessThanOrEqual(600_000)
    expect(text.split('\n').length).toBeLessThanOrEqual(20_000)
  })

  it('writes no list of words out twice', () => {
    const lists = new Map<string, number>()
    JSON.stringify(committed, (_name, value) => {
      const words = value?.type === 'string' && value.enum?.length > 2 ? String(value.enum) : undefined
      if (words !== undefined) lists.set(words, (lists.get(words) ?? 0) + 1)
      return value
    })
    expect([...lists].filter(([, times]) => times > 2)).toEqual([])
  })

  it('spells nothing in the ways that widespread generators stumble over', () => {
    const text = JSON.stringify(committed.components) + JSON.stringify(committed.paths)
    expect(text).not.toMatch(/"const":(?!\{)|"type":\[|"allOf":\[\{"\$ref":"[^"]+"\}\]/)
  })

  for (const operation of operations) {
    const { path, operationId, examples, heavy = false } = operation
    const shown = committed.paths[path].post.responses[200].content['application/json'].examples ?? {}
    it(`${operationId} leads to its examples and shows the short one`, () => {
      expect(committed.paths[path].post.description).toContain(`](${examplesPath(operation)})`)
      const short = shownAnswer(operation)
      const named = short === undefined ? [] : [[short.name, { summary: short.summary, value: JSON.parse(short.text) }]]
      expect(shown).toEqual(Object.fromEntries(named))
    })

    for (const [name, { request }] of heavy ? [] : Object.entries(examples)) {
      it(`${operationId} answers its example ${name} as the contract describes`, async () => {
        const { status, body } = await post(path, request)
        expect(status, JSON.stringify(body)).toBe(200)
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        expect(body).toEqual(shown[name]?.value ?? body)
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
