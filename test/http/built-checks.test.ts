/** Checks written as code by the build refuse what compiled ones refuse, word for word: held by the requests of the fuzzer. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Checks, checksAsCode, checksFile } from '../../scripts/built-checks.ts'
import { operations } from '../../src/http/operations.ts'
import { schemaCheck } from '../../src/http/wire/request/schema-check.ts'
import { schemaFaults } from '../../src/http/wire/request/schema-faults.ts'
import { schemaKey } from '../../src/http/wire/request/schema-key.ts'
import { testApp } from '../support/call.ts'
import { requestSchema } from '../support/contract-judge.ts'
import { brokenBody, nearExample, pick, type Random, seeded, valueFor } from '../support/random-requests.ts'

const ROUNDS = 200
const folder = mkdtempSync(path.join(tmpdir(), 'cabinbass-checks-'))
let checks: Checks = {}

beforeAll(async () => {
  const app = await testApp()
  await app.ready()
  const file = path.join(folder, checksFile)
  writeFileSync(file, await checksAsCode(app.checkedSchemas))
  checks = createRequire(import.meta.url)(file)
})
afterAll(() => rmSync(folder, { recursive: true }))

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

function sent(url: string, examples: readonly unknown[], random: Random): unknown {
  const example = pick(random, examples)
  const roll = random()
  if (roll < 0.3) return valueFor(requestSchema(url), random, 0.5)
  if (roll < 0.5) return nearExample(url, example, random)
  return parsed(brokenBody(url, example, random))
}

describe('checks written by the build', () => {
  it('are there for all that a route holds requests against', async () => {
    const { checkedSchemas } = await testApp()
    expect(new Set(Object.keys(checks))).toEqual(new Set(checkedSchemas.map(schemaKey)))
    expect(Object.values(checks).every(check => typeof check === 'function')).toBe(true)
  })

  for (const { operationId, path: url, body, examples } of operations) {
    it(`refuse for ${operationId} what compiled ones refuse`, () => {
      const written = checks[schemaKey(body)]
      if (written === undefined) throw new TypeError(`no check of ${operationId}`)
      const compiled = schemaCheck(body)
      const random = seeded(20261126)
      const requests = Object.values(examples).map(({ request }) => request)
      let refused = 0
      for (let round = 0; round < ROUNDS; round++) {
        const request = sent(url, requests, random)
        const [one, other] = [compiled(request), written(request)]
        expect(other, JSON.stringify(request)).toBe(one)
        if (one === true) continue
        refused++
        expect(schemaFaults(written.errors ?? [])).toEqual(schemaFaults(compiled.errors ?? []))
      }
      expect(refused).toBeGreaterThan(ROUNDS / 10)
      expect(refused).toBeLessThan(ROUNDS)
    })
  }
})
