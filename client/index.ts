/** Typed calls to the service: every path, body, answer and problem as the contract says. */
import createFetchClient, { type Client, type ClientOptions } from 'openapi-fetch'
import type { components, paths } from './schema.ts'

export type { components, paths } from './schema.ts'
export type Schemas = components['schemas']
export type Problem = Schemas['Problem']
export type CabinbassClient = Client<paths>

export interface CabinbassOptions extends ClientOptions {
  /** Sent as X-Api-Key where the service asks for one. */
  readonly apiKey?: string
}

/** `createClient({ baseUrl: 'http://localhost:3000' }).POST('/v1/coils/wiring', { body })` gives `{ data }` or `{ error }`, a Problem. */
export function createClient({ apiKey, ...options }: CabinbassOptions): CabinbassClient {
  const client = createFetchClient<paths>(options)
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
