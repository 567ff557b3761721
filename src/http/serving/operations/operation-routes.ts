/** Mounts the operations: schema, form, one call, the answer. */

import type { FastifyInstance, FastifyReply } from 'fastify'
import Type, { type TSchema } from 'typebox'
import { ref } from '../../../contract/field/component.ts'
import { choice } from '../../../contract/field/quantities.ts'
import { present } from '../../../domain/present.ts'
import { say } from '../../../domain/say.ts'
import { deprecationHeaders } from '../../wire/deprecation.ts'
import { type Answer, type AnswerOptions, isHeavy, isLines, type Operation } from '../../wire/operation.ts'
import { problemKinds } from '../../wire/problem/problem-kinds.ts'
import { ProblemBody } from '../../wire/problem/problem-schema.ts'
import { ClientGone, Refusal } from '../../wire/problem/refusal.ts'
import { unmetConditions } from '../../wire/request/conditions.ts'
import { inParts, type Progress, partsOf } from '../../work/divided.ts'
import type { Work } from '../../work/pool.ts'
import { type Task, taskOf } from '../../work/task.ts'
import { contentType, type FormQuery, formChoice, isText, mediaTypes, negotiated } from '../representation/forms.ts'
import { languageChoice, speaking } from '../representation/language.ts'
import { answeredInLines } from './answer-lines.ts'
import { pagePolicy } from './page-policy.ts'
import { askedParts, type PartsQuery, partsParameter } from './parts-query.ts'

export const AnswerQuery = Type.Object(
  {
    digits: Type.Optional(choice('`six` significant digits (the default) or `full` precision', ['six', 'full'])),
    basis: Type.Optional(choice('`true` adds how each figure was reached', ['true', 'false'])),
    language: languageChoice
  },
  { additionalProperties: false }
)

/** What may be asked of the answer of one operation. */
export const queryOf = (operation: Operation) =>
  Type.Object(
    {
      ...AnswerQuery.properties,
      ...present({
        form: operation.forms.length === 0 ? undefined : formChoice(operation.forms.map(({ mediaType }) => mediaType)),
        parts: operation.parts.length === 0 ? undefined : partsParameter(operation)
      })
    },
    { additionalProperties: false }
  )

interface AnswerQueryValues extends FormQuery, PartsQuery {
  readonly digits?: AnswerOptions['digits']
  readonly basis?: 'true' | 'false'
  readonly validate?: 'only'
}

/** The answer of an operation, from this thread or a worker; ends when the client has gone. */
export type AnswerCall = (
  operation: Operation,
  request: unknown,
  options: AnswerOptions,
  reply: FastifyReply,
  /** Hears how far a call is that is worked on in parts, where somebody watches. */
  told?: (progress: Progress) => void
) => Promise<Answer>

/** Aborts with {@link ClientGone} when the connection closes before the answer has left. */
export function clientGone({ raw }: FastifyReply): AbortSignal {
  const gone = new AbortController()
  raw.once('close', () => {
    if (!raw.writableFinished) gone.abort(new ClientGone('the client has gone'))
  })
  return gone.signal
}

export function answerCall(work: Work): AnswerCall {
  return (operation, request, options, reply, told) => {
    if (!isHeavy(operation, request, options)) return operation.run(request, options)
    const gone = clientGone(reply)
    const run = (task: Task) => work.run(task, gone)
    const parts = partsOf(operation, request, told !== undefined)
    if (parts === undefined) return run(taskOf(operation, request, options))
    return inParts({ operation, request, options, parts }, run, told ?? (() => {}))
  }
}

/** Problem answers of the contract by status. */
export function refusals(...statuses: readonly number[]) {
  return Object.fromEntries(
    statuses.map(status => [
      status,
      {
        description: Object.entries(problemKinds)
          .filter(([, kind]) => kind.status === status)
          .map(([code, kind]) => `\`${code}\`: ${kind.title}`)
          .join('. '),
        content: { 'application/problem+json': { schema: ref(ProblemBody) } }
      }
    ])
  )
}

/** `format` is what generators of clients look at, `contentMediaType` is the word of JSON Schema 2020-12. */
const binary = (contentMediaType: string, description: string) => ({
  type: 'string',
  format: 'binary',
  contentMediaType,
  description
})

function shape(mediaType: string, description: string, schema: TSchema | undefined) {
  if (schema !== undefined) return ref(schema)
  return isText(mediaType) ? { type: 'string', description } : binary(mediaType, description)
}

export function successOf({ answer, forms }: Operation) {
  const others = forms.map(({ mediaType, description, schema }) => [
    mediaType,
    { schema: shape(mediaType, description, schema) }
  ])
  return {
    description: 'The result',
    content: { 'application/json': { schema: ref(answer) }, ...Object.fromEntries(others) }
  }
}

const validateOnly = {
  validate: Type.Optional(
    choice('`only`: 204 where fields and their conditions leave nothing to refuse; nothing is calculated', ['only'])
  )
}

function documentation(operation: Operation) {
  const { operationId, tag, summary, description, body, deprecation } = operation
  return {
    operationId,
    ...(deprecation === undefined ? {} : { deprecated: true }),
    tags: [tag],
    summary,
    description,
    querystring: Type.Object({ ...queryOf(operation).properties, ...validateOnly }, { additionalProperties: false }),
    body: ref(body),
    response: {
      200: successOf(operation),
      204: { description: 'With `?validate=only`: nothing to refuse was found', type: 'null' },
      ...refusals(400, 401, 406, 413, 415, 422, 429, 500, 503)
    }
  }
}

/** @throws Refusal 422, as the calculation would */
function refuseUnmet({ body }: Operation, request: unknown): void {
  const errors = unmetConditions(body, request)
  const [first] = errors
  if (first === undefined) return
  const code = first.code === 'missing-input' ? 'missing-input' : 'conflicting-input'
  throw new Refusal(code, first.said?.detail ?? say('contract.unfit'), { errors })
}

function mount(app: FastifyInstance, operation: Operation, answer: AnswerCall): void {
  const { path, deprecation, bodyLimits = 1 } = operation
  const accepted = mediaTypes(operation)
  app.post<{ Querystring: AnswerQueryValues }>(
    path,
    {
      onRequest: async (request, reply) => {
        if (deprecation !== undefined) reply.headers(deprecationHeaders(deprecation))
        negotiated(accepted, request, reply)
      },
      schema: documentation(operation),
      bodyLimit: bodyLimits * (app.initialConfig.bodyLimit ?? 0)
    },
    async (request, reply) => {
      const { digits = 'six', basis, validate } = request.query
      if (validate === 'only') {
        refuseUnmet(operation, request.body)
        return reply.code(204).header('cache-control', 'no-store').send()
      }
      const form = negotiated(accepted, request, reply)
      const language = speaking(form, request, reply)
      const options = { digits, basis: basis === 'true', form, language, ...askedParts(operation, request.query, form) }
      const type = contentType(form)
      if (isLines(options)) {
        return answeredInLines(reply.type(type), told => answer(operation, request.body, options, reply, told))
      }
      const { body } = await answer(operation, request.body, options, reply)
      if (form === 'text/html') reply.header('content-security-policy', pagePolicy)
      return reply.type(type).header('cache-control', 'no-store').send(body)
    }
  )
}

export function registerOperations(app: FastifyInstance, operations: readonly Operation[], answer: AnswerCall): void {
  for (const operation of operations) mount(app, operation, answer)
}
