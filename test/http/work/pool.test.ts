import { afterAll, describe, expect, it } from 'vitest'
import { DesignError } from '../../../src/domain/design-error.ts'
import { operations } from '../../../src/http/operations.ts'
import { Refusal } from '../../../src/http/wire/problem/refusal.ts'
import { workPool } from '../../../src/http/work/pool.ts'

const never = new AbortController().signal
const coils = operations.find(({ operationId }) => operationId === 'wireCoils')
const request = Object.values(coils?.examples ?? {})[0]?.request
const options = { digits: 'six', basis: false } as const
const task = { operationId: 'wireCoils', request, options, costMs: 0.3 }
const sizes = { workers: 1, workerHeapMb: 256, workQueueMax: 4, workTimeoutMs: 20_000 }

describe('worker pool', () => {
  const work = workPool(sizes)
  afterAll(work.close)

  it('gives the same bytes as the event loop', async () => {
    const { body } = await work.run(task, never)
    expect(body).toBe(coils?.answerText(request, options))
  })

  it('refuses a call when as many wait as may', async () => {
    const calls = Array.from({ length: 12 }, () => work.run(task, never))
    const settled = await Promise.allSettled(calls)
    const refused = settled.flatMap(call => (call.status === 'rejected' ? [call.reason] : []))
    expect(refused.length).toBeGreaterThan(0)
    expect(refused.length).toBeLessThan(12)
    for (const reason of refused) expect((reason as Refusal).code).toBe('overloaded')
  })

  it('stops when nobody waits any longer', async () => {
    const gone = new AbortController()
    const call = work.run(task, gone.signal)
    gone.abort()
    await expect(call).rejects.toThrow(Refusal)
    expect(work.waiting()).toBe(0)
  })

  it('brings a refusal of the domain back with its fields', async () => {
    const refusing = operations.find(({ operationId }) => operationId === 'computeResponse')
    if (refusing === undefined) return
    const impossible = { ...task, operationId: 'computeResponse', request: { driver: {}, enclosure: {} } }
    await expect(work.run(impossible, never)).rejects.toThrow(DesignError)
  })

  it('ends a call that outlives its budget', async () => {
    const hasty = workPool({ ...sizes, workTimeoutMs: 1 })
    await expect(hasty.run(task, never)).rejects.toMatchObject({ code: 'out-of-time' })
    await hasty.close()
  })
})
