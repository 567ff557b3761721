/** Runs the calls of a batch: bounded parallelism, order kept, one bad call spoils only itself. */

import type { Said } from '../../../contract/sentences/form/template.ts'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { DesignError } from '../../../domain/design-error.ts'
import { languages } from '../../../domain/languages.ts'
import { say, spoken } from '../../../domain/say.ts'
import type { Answer, AnswerOptions, Operation } from '../../wire/operation.ts'
import { designProblem } from '../../wire/problem/design-problem.ts'
import { type Problem, type ProblemError, problem } from '../../wire/problem/problem.ts'
import { hasLeft, Refusal } from '../../wire/problem/refusal.ts'

export interface BatchCall {
  readonly id?: string
  readonly operationId: string
  readonly request: unknown
}

export interface BatchMeans {
  readonly operations: ReadonlyMap<string, Operation>
  readonly faultsOf: (schema: Operation['body'], request: unknown) => readonly ProblemError[]
  readonly answer: (operation: Operation, request: unknown, options: AnswerOptions) => Promise<Answer>
  /** Called for a fault of ours, whose details never leave. */
  readonly report: (error: unknown) => void
}

export interface BatchText {
  readonly answered: boolean
  /** The item as JSON; the answer inside is the very text the operation gives. */
  readonly text: string
}

function problemOf(
  error: unknown,
  operation: Operation,
  report: BatchMeans['report'],
  language: LanguageCode
): Problem {
  const told = (said: Said) => spoken(said, languages[language])
  if (error instanceof DesignError) return designProblem(error, operation.body, language)
  if (error instanceof Refusal) return problem(error.code, told(error.said), error.errors, language)
  if (hasLeft(error)) return problem('out-of-time', told(say('service.client-gone')), undefined, language)
  report(error)
  return problem('internal', told(say('service.defect')), undefined, language)
}

/** @returns the answer's text, or the problem */
async function answerOf(call: BatchCall, options: AnswerOptions, means: BatchMeans): Promise<string | Problem> {
  const operation = means.operations.get(call.operationId)
  const { language = 'en' } = options
  if (operation === undefined)
    return problem('not-found', spoken(say('service.no-operation'), languages[language]), undefined, language)
  const faults = means.faultsOf(operation.body, call.request)
  if (faults.length > 0)
    return problem(
      'invalid-request',
      spoken(say('contract.faults.call', { faults: faults.length }), languages[language]),
      faults,
      language
    )
  try {
    return String((await means.answer(operation, call.request, options)).body)
  } catch (error) {
    return problemOf(error, operation, means.report, language)
  }
}

export async function runCall(
  call: BatchCall,
  index: number,
  options: AnswerOptions,
  means: BatchMeans
): Promise<BatchText> {
  const found = await answerOf(call, options, means)
  const answered = typeof found === 'string'
  const id = call.id === undefined ? '' : `"id":${JSON.stringify(call.id)},`
  const head = `"index":${index},${id}"operationId":${JSON.stringify(call.operationId)},`
  return answered
    ? { answered, text: `{"outcome":"answered",${head}"status":200,"answer":${found}}` }
    : { answered, text: `{"outcome":"refused",${head}"status":${found.status},"problem":${JSON.stringify(found)}}` }
}

/** Yields results in order while at most `parallel` of them are being worked on. */
export async function* inOrder<Result>(
  from: number,
  to: number,
  parallel: number,
  run: (index: number) => Promise<Result>
): AsyncGenerator<Result> {
  const underway: Promise<Result>[] = []
  let next = from
  while (next < to || underway.length > 0) {
    while (next < to && underway.length < parallel) underway.push(run(next++))
    const first = underway.shift()
    if (first !== undefined) yield await first
  }
}
