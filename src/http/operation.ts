/**
 * One resource of the service: its schemas and the pure function behind it. Routes, batches, workers, the contract and the
 * plan's parts all go through this record, so that none of them can differ from another.
 */
import type { Static, TObject, TSchema } from 'typebox'
import type { Outcome } from '../domain/outcome.ts'
import { type Digits, jsonWriter } from './json-writer.ts'
import type { JsonSchema } from './schemas/component.ts'
import { answerOf } from './schemas/envelope.ts'
import { toSi } from './to-si.ts'
import { wireOutcome } from './wire-outcome.ts'
import type { Si } from './wire-units.ts'

export interface Example {
  readonly summary: string
  readonly request: unknown
}

export interface OperationText {
  readonly path: `/v1/${string}`
  readonly operationId: string
  readonly tag: string
  readonly summary: string
  readonly description: string
  /** Worked requests; the contract shows each with the answer the service gives. */
  readonly examples: Readonly<Record<string, Example>>
  /** Runs in a worker thread, for whatever can hold the event loop longer than a few milliseconds. */
  readonly heavy?: boolean
}

export interface AnswerOptions {
  readonly digits: Digits
  readonly basis: boolean
}

export interface Operation extends OperationText {
  readonly body: TObject
  readonly result: TSchema
  readonly answer: TSchema
  /** From a validated request to the text of the answer. @throws DesignError */
  readonly answerText: (request: unknown, options: AnswerOptions) => string
}

interface Definition<Body extends TObject, Result extends TSchema> extends OperationText {
  readonly body: Body
  readonly result: Result
  readonly compute: (request: Si<Static<Body>>) => Outcome<Si<Static<Result>>>
}

/** The answer component takes the result component's name with `Answer` for `Result`. */
export function defineOperation<Body extends TObject, Result extends TSchema>({
  compute,
  ...definition
}: Definition<Body, Result>): Operation {
  const answer = answerOf(
    `${definition.operationId[0]?.toUpperCase()}${definition.operationId.slice(1)}Answer`,
    definition.result
  )
  const write = jsonWriter(answer as JsonSchema)
  return {
    ...definition,
    answer,
    answerText: (request, { digits, basis }) => {
      const outcome = compute(toSi(request as Static<Body>))
      return write(wireOutcome(outcome, definition.body as JsonSchema, definition.result as JsonSchema, basis), digits)
    }
  }
}
