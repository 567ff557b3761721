/** Who waits, who is sent away and when to come back, by a clock of the test's own. */
import { describe, expect, it } from 'vitest'
import { Refusal } from '../../../src/http/wire/problem/refusal.ts'
import { waitingLine } from '../../../src/http/work/waiting-line.ts'

/** Until something is known a call is taken to last twice its cost. */
function place({ threads = 1, mostWaiting = 10 } = {}) {
  let ms = 0
  const line = waitingLine({ threads, mostWaiting, mostWaitMs: 20_000, now: () => ms })
  const order: string[] = []
  const finish = new Map<string, () => void>()
  const settled: Record<string, unknown> = {}
  return {
    line,
    order,
    settled,
    pass: (more: number) => {
      ms += more
    },
    ask: async (name: string, costMs: number, signal = new AbortController().signal) => {
      const work = () =>
        new Promise<string>(resolve => {
          order.push(name)
          finish.set(name, () => resolve(name))
        })
      void line.enter({ kind: 'plan', costMs }, signal, work).then(
        value => (settled[name] = value),
        error => (settled[name] = error)
      )
      await turns()
    },
    end: async (name: string) => {
      finish.get(name)?.()
      await turns()
    }
  }
}

const turns = () => new Promise(resolve => setImmediate(resolve))
const retryAfter = (error: unknown) => (error instanceof Refusal ? error.headers['retry-after'] : undefined)

describe('waiting line', () => {
  it('starts as many as there are threads, the others in turn', async () => {
    const { ask, end, order, line, settled } = place({ threads: 2 })
    for (const name of ['a', 'b', 'c', 'd']) await ask(name, 100)
    expect(order).toEqual(['a', 'b'])
    expect(line.waiting()).toBe(2)
    await end('b')
    expect(order).toEqual(['a', 'b', 'c'])
    await end('a')
    expect(order).toEqual(['a', 'b', 'c', 'd'])
    expect(settled).toEqual({ a: 'a', b: 'b' })
  })

  it('sends away whoever would wait too long, and says when half of the line will have gone', async () => {
    const { ask, settled } = place()
    await ask('runs', 6_000)
    await ask('waits', 5_000)
    await ask('too-long', 10)
    expect(settled['too-long']).toMatchObject({ code: 'overloaded' })
    // 12 s of the running one and 10 s of the waiting one lie ahead; after 12 s of them 10 s are left.
    expect(retryAfter(settled['too-long'])).toBe('12')
    expect(settled.waits).toBeUndefined()
  })

  it('learns what a kind of call really takes', async () => {
    const { ask, end, pass, settled } = place()
    for (let round = 0; round < 12; round++) {
      await ask(`quick ${round}`, 6_000)
      pass(600)
      await end(`quick ${round}`)
    }
    for (const name of ['first', 'second', 'third', 'fourth']) await ask(name, 6_000)
    expect(Object.values(settled).filter(each => each instanceof Refusal)).toEqual([])
  })

  it('does not start what has waited too long', async () => {
    const { ask, end, pass, order, settled } = place()
    await ask('slow', 1_000)
    await ask('early', 1_000)
    pass(15_000)
    await ask('late', 1_000)
    pass(6_000)
    await end('slow')
    expect(order).toEqual(['slow', 'late'])
    expect(settled.early).toMatchObject({ code: 'overloaded' })
  })

  it('keeps to its length, and lets go who leaves', async () => {
    const { ask, end, order, line, settled } = place({ mostWaiting: 1 })
    const gone = new AbortController()
    await ask('runs', 1)
    await ask('leaves', 1, gone.signal)
    await ask('one-too-many', 1)
    expect(retryAfter(settled['one-too-many'])).toBe('1')
    gone.abort()
    await turns()
    expect(line.waiting()).toBe(0)
    await end('runs')
    expect(order).toEqual(['runs'])
  })
})
