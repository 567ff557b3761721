/** Typed calls to the service: every path, body, answer and problem as the contract says. */
import createFetchClient, { type Client, type ClientOptions } from 'openapi-fetch'
import type { components, paths } from './schema.ts'

export type { components, paths } from './schema.ts'
export type Schemas = components['schemas']
export type Problem = Schemas['Problem']
/** The forms this client reads; for a drawing or a page ask with fetch and an Accept header. */
type Media = 'application/json' | 'application/problem+json'
export type CabinbassClient = Client<paths, Media>

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
