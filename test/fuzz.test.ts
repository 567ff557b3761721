/** A bounded, seeded run of the fuzzer; `npx tsx scripts/fuzz.ts` runs thousands an operation. */
import { describe, expect, it } from 'vitest'
import { operations } from '../src/http/operations.ts'
import { testApp } from './support/call.ts'
import { fuzz } from './support/fuzz.ts'

describe('whatever is sent', () => {
  for (const operation of operations) {
    // Heavy ones cross into a thread each time; fewer say as much here.
    const count = operation.heavy === true ? 15 : 48
    it(`${operation.operationId} answers as the contract says`, async () => {
      const { faults, requests, statuses } = await fuzz(await testApp(), operation, count, 20261125)
      expect(faults.slice(0, 5)).toEqual([])
      expect(requests).toBe(count)
      expect(statuses[400]).toBeGreaterThan(0)
    })
  }
})
