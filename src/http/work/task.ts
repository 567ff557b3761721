/** What travels between the event loop and a worker thread. */
import type { DesignErrorCode, Fault } from '../../domain/design-error.ts'
import type { Answer, AnswerOptions } from '../wire/operation.ts'

export interface Task {
  readonly operationId: string
  readonly request: unknown
  readonly options: AnswerOptions
}

/** A refusal crosses as data: an error object would lose its fields on the way. */
export type TaskOutcome =
  | { readonly answer: Answer }
  | { readonly refusal: { readonly code: DesignErrorCode; readonly faults: readonly [Fault, ...Fault[]] } }
