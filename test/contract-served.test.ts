/** The contract byte for byte with every example worked out by the service, and the heavy examples asked of its workers. */
import { readFileSync } from 'node:fs'
import { afterAll, describe, expect, it } from 'vitest'
import { buildApp } from '../src/app.ts'
import { operations } from '../src/http/operations.ts'
import { committed, contractFaults } from './support/contract-judge.ts'

const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })

describe('contract', () => {
  afterAll(() => app.close())

  it('is committed as the code says', async () => {
    await app.ready()
    const { yaml } = await app.contract()
    const written = readFileSync(new URL('../openapi.yaml', import.meta.url), 'utf8')
    expect(written === yaml, 'run npm run openapi').toBe(true)
  })

  for (const { path, operationId, examples, heavy = false } of operations) {
    for (const [name, { request }] of heavy ? Object.entries(examples) : []) {
      it(`${operationId} serves its example ${name} as the contract shows`, async () => {
        const answer = await app.inject({ method: 'POST', url: path, payload: request as object })
        expect(answer.statusCode, answer.body).toBe(200)
        const body = answer.json()
        expect(contractFaults(path, 200, 'application/json', body)).toEqual([])
        expect(body).toEqual(committed.paths[path].post.responses[200].content['application/json'].examples[name].value)
      })
    }
  }
})
