/** GET /docs/examples/…: every worked request of an operation with the answer the service gives, too long for the contract. */
import type { FastifyInstance } from 'fastify'
import { type FixedText, fixedText, sendFixed } from '../serving/representation/fixed-text.ts'
import { isHeavy, type Operation } from '../wire/operation.ts'
import type { Work } from '../work/pool.ts'
import { taskOf } from '../work/task.ts'
import { examplesPath } from './contract-document.ts'

const options = { digits: 'six', basis: false } as const

async function answerOf(operation: Operation, request: unknown, work: Work) {
  // Nobody waits on a connection of its own for it: the answer is kept for the next that asks.
  const inWorker = () => work.run(taskOf(operation, request, options), new AbortController().signal)
  return isHeavy(operation, request, options) ? String((await inWorker()).body) : operation.answerText(request, options)
}

async function examplesText(operation: Operation, work: Work): Promise<string> {
  const members: string[] = []
  // One after another: however short the queue is set, it must hold them.
  for (const [name, { summary, request }] of Object.entries(operation.examples)) {
    const answer = await answerOf(operation, request, work)
    members.push(`${JSON.stringify(name)}:{${JSON.stringify({ summary, request }).slice(1, -1)},"answer":${answer}}`)
  }
  return `{${members.join(',')}}`
}

export function exampleRoutes(app: FastifyInstance, operations: readonly Operation[], work: Work): void {
  for (const operation of operations) {
    const path = examplesPath(operation)
    let kept: Promise<FixedText> | undefined
    app.get(path, { schema: { hide: true } }, async (request, reply) => {
      kept ??= examplesText(operation, work).then(text => fixedText(path, text))
      const text = await kept.catch(error => {
        kept = undefined
        throw error
      })
      return sendFixed(request, reply, text, { shared: true })
    })
  }
}
