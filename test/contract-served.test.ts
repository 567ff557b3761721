/** Every worked example where the contract leads to, the heavy ones asked of the service's workers, and what a call gives for it. */
import { afterAll, describe, expect, it } from 'vitest'
import { buildApp } from '../src/app.ts'
import { examplesPath } from '../src/http/openapi/contract-document.ts'
import { operations } from '../src/http/operations.ts'
import { contractFaults } from './support/contract-judge.ts'

// What an answer is, not how fast, is asked here.
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0, workTimeoutMs: 120_000 })

describe('worked examples', () => {
  afterAll(() => app.close())

  for (const operation of operations) {
    const { path, operationId, examples, heavy = false } = operation
    it(`of ${operationId} are what the service answers`, async () => {
      const all = (await app.inject(examplesPath(operation))).json()
      expect(Object.keys(all)).toEqual(Object.keys(examples))
      for (const [name, { request, answer }] of Object.entries<{ request: unknown; answer: unknown }>(all)) {
        expect(request).toEqual(examples[name]?.request)
        expect(contractFaults(path, 200, 'application/json', answer)).toEqual([])
      }
      // Of the heavy ones the first: the service works each out by the same record.
      for (const [name, { request }] of Object.entries(examples).slice(0, heavy ? 1 : undefined)) {
        const { statusCode, body } = await app.inject({ method: 'POST', url: path, payload: request as object })
        expect(statusCode, body).toBe(200)
        expect(JSON.parse(body)).toEqual(all[name].answer)
      }
    }, 180_000)
  }
})
