/** GET forms of the small calculators: same schema, same answer, and cacheable by anybody between here and the shop. */

import type { FastifyInstance } from 'fastify'
import type { JsonSchema } from '../../../contract/field/component.ts'
import { languageCodes } from '../../../contract/sentences/words.ts'
import { present } from '../../../domain/present.ts'
import { say, worded } from '../../../domain/say.ts'
import type { AnswerOptions, Operation } from '../../wire/operation.ts'
import type { ProblemError } from '../../wire/problem/problem.ts'
import { Refusal } from '../../wire/problem/refusal.ts'
import { type QueryValues, queryFields, requestFromQuery } from '../../wire/request/query-request.ts'
import { entityTag, sendCacheable } from '../representation/etag.ts'
import { contentType, mediaTypes, negotiated } from '../representation/forms.ts'
import { speaking } from '../representation/language.ts'
import { type AnswerCall, queryOf, refusals, successOf } from './operation-routes.ts'

const MOST_REPEATED_SHOWN = 50

/** Operations whose whole input fits into a short URL. */
export const byQuery: ReadonlySet<string> = new Set([
  'completeDriverParameters',
  'sizePort',
  'wireCoils',
  'matchAmplifier',
  'computeCurrent',
  'chooseCable',
  'rateFuse'
])

/** One schema for a parameter that several branches of a union know; their tags become a choice. */
function merged(schemas: readonly JsonSchema[]): JsonSchema {
  const tags = [...new Set(schemas.flatMap(schema => (schema.const === undefined ? [] : [schema.const])))]
  const [first = {}] = schemas
  if (tags.length < 2) return first
  const { const: _tag, ...rest } = first
  return { ...rest, enum: tags }
}

/** The parameters for the contract; the request they spell is what is checked. */
function parameters(operation: Operation): JsonSchema {
  const { body } = operation
  const fields = queryFields(body)
  const named = (wanted: string) => fields.filter(({ name }) => name === wanted).map(({ schema }) => schema)
  return {
    type: 'object',
    properties: {
      ...Object.fromEntries(fields.map(({ name }) => [name, merged(named(name))])),
      ...queryOf(operation).properties
    },
    required: fields.filter(({ required }) => required).map(({ name }) => name)
  }
}

/** @throws Refusal `invalid-request` where the parameters do not make a request of this operation */
function requestOf(app: FastifyInstance, { body }: Operation, query: QueryValues): unknown {
  const request = requestFromQuery(body, query)
  const errors = app.faultsOf(body, request).map(fault => ({
    ...fault,
    parameter: fault.pointer.slice(1).replaceAll('/', '.')
  }))
  if (errors.length > 0) throw faulty(errors)
  return request
}

function faulty(errors: readonly ProblemError[]): Refusal {
  return new Refusal('invalid-request', say('contract.faults.query', { faults: errors.length }), { errors })
}

/** Readers would disagree about which of the two counts. @throws Refusal `invalid-request` */
function refuseRepeated(query: QueryValues): void {
  const errors = Object.entries(query)
    .filter(([, given]) => typeof given === 'object')
    .slice(0, MOST_REPEATED_SHOWN)
    .map(([name]) => ({
      pointer: `/${name.replaceAll('~', '~0').replaceAll('/', '~1').replaceAll('.', '/').slice(0, 300)}`.toWellFormed(),
      parameter: name.slice(0, 300).toWellFormed(),
      code: 'duplicate-name',
      ...worded({ detail: say('service.given-twice') })
    }))
  if (errors.length > 0) throw faulty(errors)
}

function optionsOf({ digits = 'six', basis = 'false', language = 'en' }: QueryValues): AnswerOptions {
  const faults = [
    ...(digits === 'six' || digits === 'full' ? [] : [{ pointer: '/digits', allowed: ['six', 'full'] }]),
    ...(basis === 'true' || basis === 'false' ? [] : [{ pointer: '/basis', allowed: ['true', 'false'] }]),
    ...(languageCodes.some(code => code === language) ? [] : [{ pointer: '/language', allowed: languageCodes }])
  ]
  if (faults.length === 0) return { digits: digits === 'full' ? 'full' : 'six', basis: basis === 'true' }
  throw faulty(
    faults.map(({ pointer, allowed }) => ({
      pointer,
      parameter: pointer.slice(1),
      code: 'unknown-value',
      ...worded({ detail: say('contract.one-of', { allowed: allowed.join(', ') }) }),
      bounds: { allowed }
    }))
  )
}

function documentation(operation: Operation) {
  const { operationId, tag, summary } = operation
  return {
    operationId: `${operationId}ByQuery`,
    tags: [tag],
    summary: `${summary}, by query`,
    description: `The same calculation as \`${operationId}\`, spelled in query parameters (\`a.b\` for a field inside a field, \`a.0.b\` for the first entry of a list) and cacheable: strong ETag, 304 without calculating.`,
    querystring: parameters(operation),
    response: {
      200: successOf(operation),
      304: { description: 'The client has this answer already', type: 'null' },
      ...refusals(400, 401, 406, 422, 429, 500, 503)
    }
  }
}

/** @param shared  whether a cache between may keep the answer: not where it is given to holders of a key */
function mount(app: FastifyInstance, operation: Operation, answer: AnswerCall, shared: boolean): void {
  const accepted = mediaTypes(operation)
  app.get<{ Querystring: QueryValues }>(
    operation.path,
    {
      config: { calculates: true, requestSchema: operation.body },
      // The parameters are read by the grammar of JSON and checked as the request they spell.
      validatorCompiler: () => () => true,
      onRequest: async (request, reply) => {
        negotiated(accepted, request, reply)
      },
      schema: documentation(operation)
    },
    async (request, reply) => {
      refuseRepeated(request.query)
      const { digits, basis, language, form: named, ...rest } = request.query
      // A resource with one form knows no such parameter.
      const query = accepted.length > 1 ? rest : { ...rest, ...present({ form: named }) }
      const given = present({ digits, basis, language })
      const form = negotiated(accepted, request, reply)
      const options = { ...optionsOf(given), form, language: speaking(form, request, reply) }
      const spelled = requestOf(app, operation, query)
      const tag = entityTag(operation.path, [spelled, options])
      return sendCacheable(request, reply, { tag, shared, type: contentType(form) }, async () => {
        const { body } = await answer(operation, spelled, options, reply)
        return typeof body === 'string' ? body : Buffer.from(body)
      })
    }
  )
}

export function registerQueryForms(
  app: FastifyInstance,
  operations: readonly Operation[],
  answer: AnswerCall,
  shared: boolean
): void {
  for (const operation of operations) {
    if (byQuery.has(operation.operationId)) mount(app, operation, answer, shared)
  }
}

declare module 'fastify' {
  interface FastifyContextConfig {
    /** Schema that the fields of a refusal point into where the route has no body. */
    readonly requestSchema?: JsonSchema
  }
}
