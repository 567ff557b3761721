/** Every refusal leaves as application/problem+json; nothing of a fault of ours is shown beyond the request id. */
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { DesignError } from '../../domain/design-error.ts'
import { designProblem } from '../design-problem.ts'
import { type Problem, type ProblemCode, problem } from '../problem.ts'
import { schemaFaults } from '../schema-faults.ts'
import type { JsonSchema } from '../schemas/component.ts'

const codeByFrameworkError: Readonly<Record<string, ProblemCode>> = {
  FST_ERR_CTP_INVALID_MEDIA_TYPE: 'unsupported-media-type',
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: 'unreadable-body',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'unreadable-body',
  FST_ERR_CTP_INVALID_JSON_BODY: 'unreadable-body',
  FST_ERR_CTP_BODY_TOO_LARGE: 'body-too-large',
  FST_ERR_BAD_URL: 'not-found'
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
  'not-found': 'Nothing lives at this path.'
}

export function sendProblem(request: FastifyRequest, reply: FastifyReply, body: Problem): FastifyReply {
  return reply
    .code(body.status)
    .type('application/problem+json')
    .header('cache-control', 'no-store')
    .send(JSON.stringify({ ...body, instance: `/requests/${request.id}` }))
}

function problemOf(error: FastifyError | DesignError, request: FastifyRequest): Problem {
  if (error instanceof DesignError) return designProblem(error, (request.routeOptions.schema?.body ?? {}) as JsonSchema)
  if (error.validation !== undefined) {
    const faults = schemaFaults(error.validation as unknown as Parameters<typeof schemaFaults>[0])
    const where = error.validationContext === 'querystring' ? 'query' : 'request'
    return problem(
      'invalid-request',
      `The ${where} has ${faults.length} ${faults.length === 1 ? 'fault' : 'faults'}.`,
      faults
    )
  }
  const code = codeByFrameworkError[error.code] ?? codeByStatus[error.statusCode ?? 500] ?? 'internal'
  if (code === 'internal') {
    request.log.error({ err: error }, 'fault of ours')
    return problem('internal', 'The request met a defect of the service.')
  }
  return problem(code, details[code] ?? error.message)
}

export function registerProblems(app: FastifyInstance): void {
  app.setErrorHandler((error: FastifyError | DesignError, request, reply) =>
    sendProblem(request, reply, problemOf(error, request))
  )
  app.setNotFoundHandler((request, reply) =>
    sendProblem(request, reply, problem('not-found', 'Nothing lives at this path.'))
  )
}
