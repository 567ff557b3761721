/** What travels between the event loop and a worker thread. */
import type { DesignErrorCode, Fault } from '../../domain/design-error.ts'
import type { Answer, AnswerOptions, Operation } from '../wire/operation.ts'

export interface Task {
  readonly operationId: string
  readonly request: unknown
  readonly options: AnswerOptions
  /** By the cost model of the operation [ms]; tells others how long they will wait. */
  readonly costMs: number
}

export function taskOf(operation: Operation, request: unknown, options: AnswerOptions): Task {
  return { operationId: operation.operationId, request, options, costMs: operation.costMs(request, options) }
}

/** A refusal crosses as data: an error object would lose its fields on the way. */
export type TaskOutcome =
  | { readonly answer: Answer }
  | { readonly refusal: { readonly code: DesignErrorCode; readonly faults: readonly [Fault, ...Fault[]] } }
