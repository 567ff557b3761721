import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inOrder } from '../../src/http/serving/batch/batch.ts'
import { coils, listening } from '../support/service.ts'

let service: Awaited<ReturnType<typeof listening>>
beforeAll(async () => {
  service = await listening({ batchItemsMax: 20 })
})
afterAll(() => service.app.close())

const good = { id: 'good', operationId: 'wireCoils', request: coils.body }
const wrong = { id: 'wrong', operationId: 'wireCoils', request: { ...coils.body, coilOhm: '4' } }

async function batch(calls: unknown, { query = '', accept = 'application/json' } = {}) {
  const response = await fetch(`${service.url}/v1/batches${query}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', accept },
    body: JSON.stringify({ calls })
  })
  return { status: response.status, type: response.headers.get('content-type'), text: await response.text() }
}

describe('batches', () => {
  it('keep order and ids, and one bad call spoils only itself', async () => {
    const { status, text } = await batch([good, wrong, { operationId: 'wireCoils', request: coils.body }])
    const { items, summary } = JSON.parse(text)
    expect(status).toBe(200)
    expect(items.map(({ index, id, status: own }: Record<string, unknown>) => [index, id, own])).toEqual([
      [0, 'good', 200],
      [1, 'wrong', 400],
      [2, undefined, 200]
    ])
    expect(items[1].problem.errors).toEqual([expect.objectContaining({ pointer: '/coilOhm', code: 'wrong-type' })])
    expect(summary).toEqual({ calls: 3, fromIndex: 0, answered: 2, refused: 1 })
    const alone = await service.app.inject({ method: 'POST', url: coils.url, payload: coils.body })
    expect(items[0].answer).toEqual(alone.json())
  })

  it('stream a line a call and a summary, and go on where a stream was cut', async () => {
    const calls = Array.from({ length: 8 }, (_, index) => ({ ...good, id: `call ${index}` }))
    const { type, text } = await batch(calls, { accept: 'application/x-ndjson' })
    expect(type).toBe('application/x-ndjson; charset=utf-8')
    const lines = text.trimEnd().split('\n')
    expect(lines).toHaveLength(9)
    expect(lines.slice(0, 8).map(line => JSON.parse(line).id)).toEqual(calls.map(({ id }) => id))
    expect(JSON.parse(lines[8] ?? '')).toEqual({ summary: { calls: 8, fromIndex: 0, answered: 8, refused: 0 } })
    const rest = await batch(calls, { accept: 'application/x-ndjson', query: '?fromIndex=5' })
    expect(rest.text.split('\n').slice(0, 3)).toEqual(lines.slice(5, 8))
  })

  it('tell an answer from a problem by a word, and name the operation', async () => {
    const { items } = JSON.parse((await batch([good, wrong])).text)
    expect(items.map(({ outcome, operationId }: Record<string, unknown>) => [outcome, operationId])).toEqual([
      ['answered', 'wireCoils'],
      ['refused', 'wireCoils']
    ])
  })

  it('take ten times as many line by line', async () => {
    const many = Array.from({ length: 200 }, (_, index) => ({ ...good, id: `call ${index}` }))
    expect((await batch(many)).status).toBe(400)
    const { status, text } = await batch(many, { query: '?form=ndjson' })
    expect(status, text).toBe(200)
    expect(text.trimEnd().split('\n')).toHaveLength(201)
    expect((await batch([...many, good], { query: '?form=ndjson' })).status).toBe(400)
  })

  it('are refused whole only where the batch itself is wrong', async () => {
    for (const [calls, query = ''] of [
      [[]],
      [{}],
      [[{ operationId: 'nothing', request: {} }]],
      [[{ ...good, extra: 1 }]],
      [Array(21).fill(good)],
      [Array(101).fill(good)],
      [[good], '?fromIndex=x'],
      [[good], '?fromIndex=1001']
    ] as const) {
      const { status, text } = await batch(calls, { query })
      expect(status, text).toBe(400)
    }
    expect((await batch([good], { accept: 'text/csv' })).status).toBe(406)
  })

  it('count each call against the limit', async () => {
    const limited = await listening({ rateLimitMax: 5 })
    const send = (calls: number) =>
      limited.app.inject({ method: 'POST', url: '/v1/batches', payload: { calls: Array(calls).fill(good) } })
    expect((await send(3)).statusCode).toBe(200)
    expect((await send(3)).statusCode).toBe(429)
    await limited.app.close()
  })

  it('never work on more than the given number at once', async () => {
    let underway = 0
    let most = 0
    const run = async (index: number) => {
      most = Math.max(most, ++underway)
      await new Promise(resolve => setTimeout(resolve, 10 - index))
      underway--
      return index
    }
    const seen: number[] = []
    for await (const index of inOrder(2, 10, 3, run)) seen.push(index)
    expect(seen).toEqual([2, 3, 4, 5, 6, 7, 8, 9])
    expect(most).toBe(3)
  })
})
