/** What an answer is cited by, which parts of it come, and which figures a version moved. */
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { branchesOf, type JsonSchema } from '../../src/contract/field/component.ts'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'
import { operations } from '../../src/http/operations.ts'
import { changes } from '../../src/http/serving/catalogue/changes.ts'
import { canonicalJson } from '../../src/http/wire/answer/canonical-json.ts'
import { version } from '../../src/http/wire/answer/version.ts'
import { post, testApp } from '../support/call.ts'
import { coils } from '../support/service.ts'

/** The line of a change in the changelog. */
const changeLine = ({ operationId, figures, text }: (typeof changes)[number]['moved'][number]): string =>
  `- ${operationId} ${figures.join(' ')}: ${text}`

describe('canonical JSON', () => {
  // RFC 8785 §3.2.2 and §3.2.3 (from memory): numbers, text and the order of names.
  for (const [given, text] of [
    [
      '[333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001]',
      '[333333333.3333333,1e+30,4.5,0.002,1e-27]'
    ],
    [
      '{"b": false, "a": null, "\\u20ac": "\\u20ac", "1": "\\u000f\\nA"}',
      '{"1":"\\u000f\\nA","a":null,"b":false,"€":"€"}'
    ]
  ] as const) {
    it(given, () => expect(canonicalJson(JSON.parse(given))).toBe(text))
  }
})

describe('the calculation of an answer', () => {
  it('can be worked out again by anybody', async () => {
    const { body } = await post(coils.url, coils.body)
    // The names in order, by hand; SHA-256 of the platform.
    const text = `["${version}","wireCoils",{"coilOhm":4,"coilsPerDriver":1,"driverCount":2}]`
    const digest = createHash('sha256').update(text).digest('base64url').slice(0, 27)
    expect(body.calculation).toEqual({ version, digest })
  })

  it('is that of the question, not of its spelling', async () => {
    const digests = await Promise.all(
      [
        '{"coilOhm":4.0,"coilsPerDriver":1,"driverCount":2}',
        '{ "driverCount": 2, "coilOhm": 4, "coilsPerDriver": 1 }'
      ].map(async text => (await post(coils.url, text)).body.calculation.digest)
    )
    expect(new Set(digests).size).toBe(1)
    expect((await post(coils.url, { ...coils.body, coilOhm: 4.1 })).body.calculation.digest).not.toBe(digests[0])
  })

  it('stands on every paper', async () => {
    const app = await testApp()
    const { body } = await post('/v1/plans?parts=summary', estatePlan)
    const { digest } = body.calculation
    for (const form of ['html', 'text', 'markdown']) {
      const paper = await app.inject({ method: 'POST', url: `/v1/plans?form=${form}`, payload: estatePlan })
      expect(paper.body).toContain(`version ${version}, calculation ${digest}`)
    }
  })
})

describe('?parts=', () => {
  it('gives these parts, the verdict and all cautions, as the whole plan has them', async () => {
    const whole = (await post('/v1/plans', estatePlan)).body
    const some = (await post('/v1/plans?parts=billOfMaterials,parts.box,parts.cable', estatePlan)).body
    expect(Object.keys(some.result).sort()).toEqual(['billOfMaterials', 'parts', 'summary'])
    expect(some.result.parts).toEqual({ box: whole.result.parts.box, cable: whole.result.parts.cable })
    for (const part of ['summary', 'billOfMaterials']) expect(some.result[part]).toEqual(whole.result[part])
    expect({ ...some, result: undefined }).toEqual({ ...whole, result: undefined })
  })

  it('refuses an unknown part by its place, with what may be meant', async () => {
    const { status, body } = await post('/v1/plans?parts=summary,bilOfMaterials', estatePlan)
    expect(status).toBe(400)
    expect(body.errors).toEqual([
      expect.objectContaining({
        pointer: '/parts/1',
        parameter: 'parts',
        code: 'unknown-value',
        detail: expect.stringContaining('billOfMaterials')
      })
    ])
    for (const odd of ['parts=', 'parts=,', 'parts=parts.', 'parts=__proto__', 'parts=summary&form=html']) {
      expect((await post(`/v1/plans?${odd}`, estatePlan)).status, odd).toBe(400)
    }
    expect((await post(`${coils.url}?parts=loads`, coils.body)).status).toBe(400)
  })
})

describe('/v1/changes', () => {
  const sections = readFileSync(new URL('../../CHANGELOG.md', import.meta.url), 'utf8')
    .split(/^## /m)
    .slice(1)

  it('says what the changelog says under "Figures moved"', () => {
    for (const section of sections) {
      const [name = ''] = section.split(/\s/)
      const [, moved = ''] = section.split(/^### Figures moved\n/m)
      const [lines = ''] = moved.split(/^### /m)
      const told = changes.find(change => change.version === name)
      expect(lines.split('\n').filter(line => line.startsWith('- '))).toEqual((told?.moved ?? []).map(changeLine))
    }
    expect(changes.map(change => change.version)).toEqual(sections.map(section => section.split(/\s/)[0]))
  })

  const inside = (schemas: readonly JsonSchema[], token: string) =>
    schemas.flatMap(({ properties, items }) => {
      const next = token === '-' ? items : properties?.[token]
      return next === undefined ? [] : branchesOf(next)
    })

  it('points at figures that the contract has', async () => {
    for (const { operationId, figures } of changes.flatMap(({ moved }) => moved)) {
      const operation = operations.find(each => each.operationId === operationId)
      expect(operation, operationId).toBeDefined()
      for (const figure of figures) {
        const found = figure
          .slice(1)
          .split('/')
          .reduce(inside, branchesOf(operation?.result as JsonSchema))
        expect(found, `${operationId} ${figure}`).not.toEqual([])
      }
    }
    const app = await testApp()
    expect((await app.inject('/v1/changes')).json()).toEqual({ versions: JSON.parse(JSON.stringify(changes)) })
  })
})
