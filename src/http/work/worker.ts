/** Runs one heavy calculation in a thread of its own. */
import { DesignError } from '../../domain/design-error.ts'
import { operations } from '../operations.ts'
import type { Task, TaskOutcome } from './task.ts'

const byId = new Map(operations.map(operation => [operation.operationId, operation]))

export default async function work({ operationId, request, options }: Task): Promise<TaskOutcome> {
  const operation = byId.get(operationId)
  if (operation === undefined) throw new TypeError(`no operation ${operationId}`)
  try {
    return { answer: await operation.run(request, options) }
  } catch (error) {
    if (!(error instanceof DesignError)) throw error
    const [first, ...more] = error.faults
    if (first === undefined) throw error
    return { refusal: { code: error.code, faults: [first, ...more] } }
  }
}
