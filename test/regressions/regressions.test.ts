/** Every fault the adversary ever found is put to the service again. */
import { describe, expect, it } from 'vitest'
import { readCases } from '../../scripts/adversary/cases.ts'
import { isSlow } from '../../scripts/adversary/hunt.ts'
import { asked, generalFinding, lawFinding, replyFindings } from '../../scripts/adversary/judge.ts'
import { generalLaws } from '../../src/http/operations/general-laws.ts'
import { operations } from '../../src/http/operations.ts'
import { testApp } from '../support/call.ts'

describe('a fault the adversary found', () => {
  for (const { file, operationId, law, kind, request, varied } of readCases()) {
    it(`does not come back: ${file}`, async () => {
      const app = await testApp()
      const operation = operations.find(one => one.operationId === operationId)
      if (operation === undefined) throw new TypeError(`${file} names no operation`)
      const reply = await asked(app, operation, request)
      expect(replyFindings(operation, request, reply)).toEqual([])
      if (kind === 'slow') expect(await isSlow(app, operation, request)).toBe(false)
      if (law === undefined || reply.status !== 200) return
      const general = generalLaws.find(({ id }) => id === law)
      if (general !== undefined) {
        expect(await generalFinding(app, operation, general, { request, reply })).toBeUndefined()
        return
      }
      const own = operation.laws.find(({ id }) => id === law)
      if (own === undefined) throw new TypeError(`${file} names no law of ${operationId}`)
      expect(await lawFinding(app, operation, own, { request, reply }, () => varied)).toBeUndefined()
    })
  }
})
