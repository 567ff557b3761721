/**
 * After listening, while nobody may be waiting yet: each light operation answers its first example here, and a worker makes the
 * dearest plan twice. First calls cost four to ten times the later ones, which run optimised.
 */
import { setImmediate as nextTurn } from 'node:timers/promises'
import type { FastifyInstance } from 'fastify'
import { isHeavy, type Operation } from '../wire/operation.ts'
import type { Work } from './pool.ts'
import { taskOf } from './task.ts'

const options = { digits: 'six', basis: false } as const

const firstRequest = ({ examples }: Operation): unknown => Object.values(examples)[0]?.request

async function warmThread(app: FastifyInstance, operations: readonly Operation[]): Promise<void> {
  for (const operation of operations) {
    await nextTurn()
    const request = firstRequest(operation)
    app.faultsOf(operation.body, request)
    if (!isHeavy(operation, request, options)) operation.answerText(request, options)
  }
}

async function warmWorker(operations: readonly Operation[], work: Work): Promise<void> {
  const nobodyLeaves = new AbortController().signal
  const dearest = operations.find(({ operationId }) => operationId === 'planSystem')
  if (dearest === undefined) return
  const task = taskOf(dearest, firstRequest(dearest), options)
  for (let time = 0; time < 2; time++) await work.run(task, nobodyLeaves)
}

export async function warmUp(app: FastifyInstance, operations: readonly Operation[], work: Work): Promise<void> {
  try {
    await Promise.all([warmThread(app, operations), warmWorker(operations, work)])
    app.log.debug('warm')
  } catch (err) {
    // Closed while at it, or too busy for it: whoever calls first warms it.
    app.log.debug({ err }, 'not warm')
  }
}
