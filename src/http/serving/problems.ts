/** Every refusal leaves as application/problem+json; nothing of a fault of ours is shown beyond the request id. */

import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import type { Said } from '../../contract/sentences/form/template.ts'
import type { LanguageCode } from '../../contract/sentences/words.ts'
import { DesignError } from '../../domain/design-error.ts'
import { languages } from '../../domain/languages.ts'
import { say, spoken } from '../../domain/say.ts'
import { designProblem } from '../wire/problem/design-problem.ts'
import { type Problem, problem, problemWords } from '../wire/problem/problem.ts'
import type { ProblemCode } from '../wire/problem/problem-kinds.ts'
import { hasLeft, Refusal } from '../wire/problem/refusal.ts'
import { schemaFaults } from '../wire/request/schema-faults.ts'
import { speaking } from './representation/language.ts'
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

const details: Partial<Record<ProblemCode, Said>> = {
  'unsupported-media-type': say('service.body-as-json'),
  'unreadable-body': say('service.body-no-json'),
  'body-too-large': say('service.body-too-large'),
  'not-found': say('service.no-path')
}

const headersByCode: Partial<Record<ProblemCode, Readonly<Record<string, string>>>> = {
  'unsupported-media-type': { 'accept-post': 'application/json' },
  overloaded: { 'retry-after': '2' },
  'out-of-time': { 'retry-after': '10' }
}

function missingHeaders(reply: FastifyReply, headers: Readonly<Record<string, string>>) {
  return Object.fromEntries(Object.entries(headers).filter(([name]) => !reply.hasHeader(name)))
}

function sendProblem(request: FastifyRequest, reply: FastifyReply, body: Problem): FastifyReply {
  return reply
    .code(body.status)
    .headers(missingHeaders(reply, headersByCode[body.code] ?? {}))
    .type('application/problem+json')
    .header('cache-control', 'no-store')
    .send(JSON.stringify({ ...body, instance: `/requests/${request.id}` }))
}

type AnyError = FastifyError | DesignError | Refusal

function validationProblem({ validation, validationContext }: FastifyError, language: LanguageCode): Problem {
  const found = schemaFaults(validation as unknown as Parameters<typeof schemaFaults>[0])
  const inQuery = validationContext === 'querystring'
  const faults = inQuery ? found.map(fault => ({ ...fault, parameter: fault.pointer.slice(1) })) : found
  return problem(
    'invalid-request',
    spoken(say(`contract.faults.${inQuery ? 'query' : 'request'}`, { faults: faults.length }), languages[language]),
    faults,
    language
  )
}

function problemOf(error: AnyError, request: FastifyRequest, language: LanguageCode): Problem {
  if (error instanceof DesignError) {
    const { schema, config } = request.routeOptions
    return designProblem(error, config.requestSchema ?? schema?.body ?? {}, language)
  }
  if (error instanceof Refusal) {
    return problem(error.code, spoken(error.said, languages[language]), error.errors, language)
  }
  if (error.validation !== undefined) return validationProblem(error, language)
  // Nobody reads this one.
  if (hasLeft(error)) return problem('out-of-time', spoken(say('service.client-gone'), languages[language]))
  const code = codeByFrameworkError[error.code] ?? codeByStatus[error.statusCode ?? 500] ?? 'internal'
  if (code === 'internal') {
    request.log.error({ err: error }, 'fault of ours')
    return problem('internal', problemWords(language).internal.meaning, undefined, language)
  }
  const said = details[code]
  const detail = said === undefined ? problemWords(language)[code].meaning : spoken(said, languages[language])
  return problem(code, detail, undefined, language)
}

/** Also the answer to what the framework refuses before any hook runs, an undecodable path for one. */
export function answerError(error: AnyError, request: FastifyRequest, reply: FastifyReply): void {
  reply.headers({ ...plainHeaders, 'x-request-id': request.id })
  const language = speaking('application/json', request, reply)
  const body = problemOf(error, request, language)
  sendProblem(request, error instanceof Refusal ? reply.headers(error.headers) : reply, body)
}

/** What no error stands behind. */
export function refuse(request: FastifyRequest, reply: FastifyReply, code: ProblemCode, detail: Said): FastifyReply {
  const language = speaking('application/json', request, reply)
  return sendProblem(request, reply, problem(code, spoken(detail, languages[language]), undefined, language))
}

export function registerProblems(app: FastifyInstance): void {
  app.setErrorHandler((error: AnyError, request, reply) => answerError(error, request, reply))
  // Who guesses at a path is led to what there is (RFC 8631, from memory).
  app.setNotFoundHandler((request, reply) =>
    refuse(request, reply.header('link', '</docs>; rel="service-doc"'), 'not-found', say('service.no-path'))
  )
}
