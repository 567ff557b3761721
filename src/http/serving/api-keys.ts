/** Optional API keys: only hashes are known, every one is looked at in constant time, the key itself is never logged. */

import { createHash, timingSafeEqual } from 'node:crypto'
import type { FastifyInstance } from 'fastify'
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import type { ApiKey } from './setting-readers.ts'
import type { Settings } from './settings.ts'

declare module 'fastify' {
  interface FastifyRequest {
    /** Who calls, where a valid key was sent. */
    apiKeyHolder: string | undefined
  }
}

function holderOf(key: string, known: readonly { holder: string; hash: Buffer }[]): string | undefined {
  const given = createHash('sha256').update(key).digest()
  // No early exit: the time taken must not tell which entry came close.
  return known.reduce<string | undefined>(
    (found, { holder, hash }) => (timingSafeEqual(given, hash) ? holder : found),
    undefined
  )
}

const withHash = ({ holder, sha256 }: ApiKey) => ({ holder, hash: Buffer.from(sha256, 'hex') })
const ask = { 'www-authenticate': 'ApiKey realm="cabinbass", header="X-Api-Key"' }

/** Says who calls; runs before the limits, which count by holder. */
export function identifyCallers(app: FastifyInstance, { apiKeys }: Settings): void {
  app.decorateRequest('apiKeyHolder', undefined)
  if (apiKeys.length === 0) return
  const known = apiKeys.map(withHash)
  app.addHook('onRequest', async request => {
    const key = request.headers['x-api-key']
    if (typeof key === 'string') request.apiKeyHolder = holderOf(key, known)
  })
}

/** Only calculations ask for a key; contract, guide and catalogues stay readable. Runs behind the limits, so that guessing is limited too. */
export function requireKeys(app: FastifyInstance, { apiKeys }: Settings): void {
  if (apiKeys.length === 0) return
  app.addHook('onRequest', async ({ apiKeyHolder, routeOptions, headers, method }) => {
    const calculates = routeOptions.config.calculates === true || (method === 'POST' && routeOptions.url !== undefined)
    if (apiKeyHolder !== undefined || routeOptions.config.always === true) return
    if (calculates || headers['x-api-key'] !== undefined) {
      throw new Refusal('unauthorised', say('service.key'), { headers: ask })
    }
  })
}

declare module 'fastify' {
  interface FastifyContextConfig {
    /** A GET that calculates; every POST does. */
    readonly calculates?: boolean
  }
}
