/** What always holds, for operations that are too dear for every run. */
import { describe, expect, it } from 'vitest'
import { asked, lawFindings } from '../../scripts/adversary/judge.ts'
import { operations } from '../../src/http/operations.ts'
import { testApp } from '../support/call.ts'
import { seeded } from '../support/random-requests.ts'

describe('what always holds', () => {
  for (const one of operations.filter(({ heavy }) => heavy === true)) {
    it(`holds for the first example of ${one.operationId}`, async () => {
      const [example] = Object.values(one.examples)
      if (example === undefined) throw new TypeError(`${one.operationId} has no example`)
      const app = await testApp()
      const { request } = example
      const reply = await asked(app, one, request)
      expect(reply.status).toBe(200)
      expect(await lawFindings(app, one, { request, reply }, seeded(7))).toEqual([])
    }, 120_000)
  }
})
