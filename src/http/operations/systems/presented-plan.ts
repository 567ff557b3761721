/** A plan in the shape of the contract: each part as its own resource would answer it, or the problem it would answer. */
import type { ErrorObject } from 'ajv'
import type { LanguageCode } from '../../../contract/sentences/words.ts'
import { PlanBody } from '../../../contract/systems/plan-request.ts'
import type { Outcome } from '../../../domain/outcome.ts'
import type { PlanReason } from '../../../plan/answer/plan-summary.ts'
import type { SystemPlan } from '../../../plan/plan-system.ts'
import type { Part } from '../../../plan/request/part.ts'
import { calculationOf } from '../../wire/answer/calculation.ts'
import { jsonWriter } from '../../wire/answer/json-writer.ts'
import { wireOutcome } from '../../wire/answer/wire-outcome.ts'
import { wirePath } from '../../wire/answer/wire-path.ts'
import type { Operation } from '../../wire/operation.ts'
import { designProblem } from '../../wire/problem/design-problem.ts'
import { type Problem, type ProblemError, problem } from '../../wire/problem/problem.ts'
import { schemaCheck } from '../../wire/request/schema-check.ts'
import { schemaFaults } from '../../wire/request/schema-faults.ts'
import { type PartName, partOperations } from './plan-result.ts'

interface Refused {
  readonly status: 'failed' | 'waiting'
  readonly done: false
  readonly request?: unknown
  readonly problem: Problem
}
type PresentedPart = { readonly resource: string } & (
  | Refused
  | { readonly status: 'done'; readonly done: true; readonly request: unknown; readonly answer: unknown }
)

/** What the resource would say of a request that other parts led to; a plan may pass through figures no caller may send. */
function faultsOf({ body }: Operation, wire: unknown): readonly ProblemError[] {
  const validate = schemaCheck(body)
  return validate(wire) === true ? [] : schemaFaults((validate.errors ?? []) as ErrorObject[])
}

/** To the byte what the resource answers for the request shown. */
const answerOf = ({ operationId, body, result }: Operation, outcome: Outcome<unknown>, wire: unknown) =>
  wireOutcome(outcome, body, result, false, calculationOf(operationId, wire))

function presentedPart(operation: Operation, part: Part<unknown, unknown>, language: LanguageCode): PresentedPart {
  const { path: resource, body } = operation
  const { request } = part
  const wire = request === undefined ? undefined : JSON.parse(jsonWriter(body)(request, 'six'))
  const faults = wire === undefined ? [] : faultsOf(operation, wire)
  if (faults.length > 0) {
    const detail = `The other parts lead to a request that ${resource} does not take.`
    return { resource, status: 'failed', done: false, problem: problem('invalid-request', detail, faults, language) }
  }
  if (part.done)
    return { resource, status: 'done', done: true, request, answer: answerOf(operation, part.outcome, wire) }
  // What has no request of its own was turned down for what the plan's request says.
  const pointedInto = request === undefined ? PlanBody : body
  const status = part.refusal.waiting === true ? 'waiting' : 'failed'
  const asked = wire === undefined ? {} : { request: wire }
  return { resource, status, done: false, ...asked, problem: designProblem(part.refusal, pointedInto, language) }
}

const presentedReason = ({ at, ...reason }: PlanReason) => ({
  ...reason,
  ...(at === undefined ? {} : { pointer: wirePath(PlanBody, at).pointer })
})

export function presentedPlan({ parts, summary, ...plan }: SystemPlan, language: LanguageCode) {
  const given = Object.entries<Part<unknown, unknown> | undefined>({ ...parts })
  const rows = given.flatMap(([name, part]) =>
    part === undefined ? [] : [[name, part, presentedPart(partOperations[name as PartName], part, language)] as const]
  )
  const turnedDown = rows.flatMap(([name, part, shown]) =>
    part.done && !shown.done
      ? [{ code: shown.problem.code, part: name, detail: `${name}: ${shown.problem.detail}` }]
      : []
  )
  const verdict = turnedDown.length > 0 && summary.verdict !== 'stop' ? 'incomplete' : summary.verdict
  return {
    ...plan,
    summary: { ...summary, verdict, reasons: [...summary.reasons.map(presentedReason), ...turnedDown] },
    parts: Object.fromEntries(rows.map(([name, , presented]) => [name, presented]))
  }
}
