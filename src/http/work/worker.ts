/** Runs one heavy calculation in a thread of its own. */
import { constants, setPriority } from 'node:os'
import { DesignError } from '../../domain/design-error.ts'
import { operations } from '../operations.ts'
import type { Task, TaskOutcome } from './task.ts'

/** Where a thread has a priority of its own, who answers everybody goes first; elsewhere this would hold back the whole process. */
if (process.platform === 'linux') setPriority(constants.priority.PRIORITY_BELOW_NORMAL)

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
