/** Both readers of forms over random plans; READ_PLANS=60 reads more. */
import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '../../src/contract/systems/plan-request.ts'
import { metric } from '../../src/documents/draw/number-text.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { planSystem } from '../../src/plan/plan-system.ts'
import { ledgerFaults, ledgerOf } from '../support/figure-ledger.ts'
import { contradictions, readPlan } from '../support/plan-reader.ts'
import { randomPlan } from '../support/random-plans.ts'

const COUNT = Number(process.env.READ_PLANS ?? 8)

function faultsOf(wire: unknown): readonly string[] {
  const request = toSi(wire) as unknown as PlanRequest
  const read = readPlan(planSystem(request), request, { paper: metric })
  return [...contradictions(read), ...ledgerFaults(ledgerOf(wire))]
}

describe('the forms of random plans', () => {
  it.each(Array.from({ length: COUNT }, (_, index) => index + 1))('contradict nothing: seed %i', seed => {
    expect(faultsOf(randomPlan(seed))).toEqual([])
  })
})
