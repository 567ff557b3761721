/** Typed calls to the service: every path, body, answer and problem as the contract says. */
import createFetchClient, { type Client, type ClientOptions } from 'openapi-fetch'
import type { components, operations, paths } from './schema.js'

export type { components, operations, paths } from './schema.js'
export type Schemas = components['schemas']
export type Problem = Schemas['Problem']
/** The forms this client reads; for a drawing or a page ask with fetch and `?form=`. */
type Media = 'application/json' | 'application/problem+json'
export type CabinbassClient = Client<paths, Media>

interface Calculating {
  readonly requestBody: { readonly content: { readonly 'application/json': unknown } }
  readonly responses: { readonly 200: { readonly content: { readonly 'application/json': unknown } } }
}

/** Calculations that take a body. */
export type OperationId = {
  [Id in keyof operations]: operations[Id] extends Calculating ? Id : never
}[keyof operations]

type Of<Id extends OperationId> = operations[Id] extends infer Operation extends Calculating ? Operation : never
export type RequestOf<Id extends OperationId> = Of<Id>['requestBody']['content']['application/json']
export type AnswerOf<Id extends OperationId> = Of<Id>['responses'][200]['content']['application/json']

export interface CabinbassOptions extends ClientOptions {
  /** Sent as X-Api-Key where the service asks for one. */
  readonly apiKey?: string
}

/** `createClient({ baseUrl: 'http://localhost:3000' }).POST('/v1/coils/wiring', { body })` gives `{ data }` or `{ error }`, a Problem. */
export function createClient({ apiKey, ...options }: CabinbassOptions): CabinbassClient {
  const client = createFetchClient<paths, Media>(options)
  if (apiKey !== undefined) {
    client.use({
      onRequest({ request }) {
        request.headers.set('X-Api-Key', apiKey)
        return request
      }
    })
  }
  return client
}

/** A call of a batch, its request typed by its operation. */
export function batchCall<Id extends OperationId & Schemas['BatchCall']['operationId']>(
  operationId: Id,
  request: RequestOf<Id>,
  id?: string
): Schemas['BatchCall'] {
  return { operationId, request: request as Record<string, unknown>, ...(id === undefined ? {} : { id }) }
}

/** The answer of an item, typed by its operation; undefined where the item holds a problem or is of another operation. */
export function answerIn<Id extends OperationId>(
  item: Schemas['BatchItem'],
  operationId: Id
): AnswerOf<Id> | undefined {
  return item.outcome === 'answered' && item.operationId === operationId ? (item.answer as AnswerOf<Id>) : undefined
}
