/** Every refusal leaves as application/problem+json; nothing of a fault of ours is shown beyond the request id. */
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { JsonSchema } from '../../contract/field/component.ts'
import { DesignError } from '../../domain/design-error.ts'
import { designProblem } from '../wire/design-problem.ts'
import { type Problem, type ProblemCode, problem, problemKinds } from '../wire/problem.ts'
import { hasLeft, Refusal } from '../wire/refusal.ts'
import { schemaFaults } from '../wire/schema-faults.ts'
import { plainHeaders } from './security.ts'

const codeByFrameworkError: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'unsupported-media-type',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'unreadable-body',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'unreadable-body',
  FST_ERR_CTP_INVALID_JSON_BODY: 'unreadable-body',
  FST_ERR_CTP_BODY_TOO_LARGE: 'body-too-large',
  FST_ERR_BAD_URL: 'not-found',
  FST_ERR_MAX_PARAM_LENGTH: 'not-found'
}

const codeByStatus: Readonly<Record<number, ProblemCode>> = {
  400: 'unreadable-body',
  404: 'not-found',
  413: 'body-too-large',
  415: 'unsupported-media-type',
  429: 'too-many-requests',
  503: 'overloaded'
}

const details: Partial<Record<ProblemCode, string>> = {
  'unsupported-media-type': 'Send the body as application/json.',
  'unreadable-body': 'The body is empty or is not one JSON text.',
  'body-too-large': 'The body is larger than the service reads.',
  'not-found': 'No resource at this path.'
}

const headersByCode: Partial<Record<ProblemCode, Readonly<Record<string, string>>>> = {
  'unsupported-media-type': { 'accept-post': 'application/json' },
  overloaded: { 'retry-after': '2' },
  'out-of-time': { 'retry-after': '10' }
}

function missingHeaders(reply: FastifyReply, headers: Readonly<Record<string, string>>) {
  return Object.fromEntries(Object.entries(headers).filter(([name]) => !reply.hasHeader(name)))
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, body: Problem): FastifyReply {
  return reply
    .code(body.status)
    .headers(missingHeaders(reply, headersByCode[body.code] ?? {}))
    .type('application/problem+json')
    .header('cache-control', 'no-store')
    .send(JSON.stringify({ ...body, instance: `/requests/${request.id}` }))
}

type AnyError = FastifyError | DesignError | Refusal

function validationProblem({ validation, validationContext }: FastifyError): Problem {
  const found = schemaFaults(validation as unknown as Parameters<typeof schemaFaults>[0])
  const inQuery = validationContext === 'querystring'
  const faults = inQuery ? found.map(fault => ({ ...fault, parameter: fault.pointer.slice(1) })) : found
  const where = inQuery ? 'query' : 'request'
  return problem(
    'invalid-request',
    `The ${where} has ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}.`,
    faults
  )
}

function problemOf(error: AnyError, request: FastifyRequest): Problem {
  if (error instanceof DesignError) {
    const { schema, config } = request.routeOptions
    return designProblem(error, config.requestSchema ?? ((schema?.body ?? {}) as JsonSchema))
  }
  if (error instanceof Refusal) return problem(error.code, error.message, error.errors)
  if (error.validation !== undefined) return validationProblem(error)
  // Nobody reads this one.
  if (hasLeft(error)) return problem('out-of-time', 'The client has gone.')
  const code = codeByFrameworkError[error.code] ?? codeByStatus[error.statusCode ?? 500] ?? 'internal'
  if (code === 'internal') {
    request.log.error({ err: error }, 'fault of ours')
    return problem('internal', 'The request met a defect of the service.')
  }
  return problem(code, details[code] ?? problemKinds[code].meaning)
}

/** Also the answer to what the framework refuses before any hook runs, an undecodable path for one. */
export function answerError(error: AnyError, request: FastifyRequest, reply: FastifyReply): void {
  reply.headers({ ...plainHeaders, 'x-request-id': request.id })
  const body = problemOf(error, request)
  sendProblem(request, error instanceof Refusal ? reply.headers(error.headers) : reply, body)
}

export function registerProblems(app: FastifyInstance): void {
  app.setErrorHandler((error: AnyError, request, reply) => answerError(error, request, reply))
  app.setNotFoundHandler((request, reply) =>
    sendProblem(request, reply, problem('not-found', 'No resource at this path.'))
  )
}
