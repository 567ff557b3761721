/**
 * How much a caller may ask in a window, per API key, else per address (IPv6 by its /64); fields of the RateLimit draft.
 * Counted per process, or in a Redis that all replicas share.
 */

import rateLimit from '@fastify/rate-limit'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { present } from '../../domain/present.ts'
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import type { Settings } from './settings.ts'
import { sharedCounter } from './shared-counter.ts'

declare module 'fastify' {
  interface FastifyInstance {
    /** Takes `calls` more from the caller's window, e.g. for the calls inside a batch. @throws Refusal 429 */
    readonly spend: (request: FastifyRequest, reply: FastifyReply, calls: number) => Promise<void>
  }
}

interface Spent {
  readonly policy: string
  readonly max: number
  readonly remaining: number
  readonly resetS: number
}

function announce(reply: FastifyReply, windowS: number, { policy, max, remaining, resetS }: Spent): void {
  reply.headers({
    'ratelimit-policy': `"${policy}";q=${max};w=${windowS}`,
    ratelimit: `"${policy}";r=${remaining};t=${resetS}`
  })
}

function tooMany(max: number, windowS: number, resetS: number): Refusal {
  const detail = say('service.too-many-requests', { requests: max, windowS, restS: resetS })
  return new Refusal('too-many-requests', detail, { headers: { 'retry-after': String(Math.max(1, resetS)) } })
}

type Counter = ReturnType<FastifyInstance['createRateLimit']>
type MakeCounter = FastifyInstance['createRateLimit']

/** Counters of this process, and those of all replicas where there is a Redis. */
async function counters(app: FastifyInstance, redisUrl: string): Promise<readonly MakeCounter[]> {
  const made: MakeCounter[] = []
  if (redisUrl !== '') {
    const redis = await sharedCounter(redisUrl, app.log)
    app.addHook('onClose', async () => redis.disconnect())
    // In a scope of its own: the plugin gives its counters to the first that registers it there.
    await app.register(async scope => {
      await scope.register(rateLimit, { global: false, redis, nameSpace: 'cabinbass-' })
      made.push(scope.createRateLimit)
    })
  }
  await app.register(rateLimit, { global: false })
  return [...made, app.createRateLimit]
}

/** Counts in the first that answers: with Redis away each process goes on by itself. */
function firstThatAnswers(counts: readonly Counter[]): Counter {
  const [count, ...others] = counts
  if (count === undefined) throw new TypeError('a limit needs a counter')
  if (others.length === 0) return count
  const next = firstThatAnswers(others)
  return async request => {
    try {
      return await count(request)
    } catch {
      return next(request)
    }
  }
}

export async function registerLimits(
  app: FastifyInstance,
  { rateLimitMax, keyRateLimitMax, rateLimitWindowS, rateLimitRedis }: Settings
): Promise<void> {
  const makers = await counters(app, rateLimitRedis)
  const counter = (max: number, keyOf?: (request: FastifyRequest) => string) => {
    const options = { max, timeWindow: rateLimitWindowS * 1000, ...present({ keyGenerator: keyOf }) }
    return max === 0 ? undefined : firstThatAnswers(makers.map(make => make(options)))
  }
  const byAddress = counter(rateLimitMax)
  const byKey = counter(keyRateLimitMax, request => `key ${request.apiKeyHolder}`)

  async function spend(request: FastifyRequest, reply: FastifyReply, calls: number): Promise<void> {
    const withKey = request.apiKeyHolder !== undefined
    const count = withKey ? byKey : byAddress
    for (let call = 0; count !== undefined && call < calls; call++) {
      const state = await count(request)
      if (state.isAllowed) return
      const policy = withKey ? 'key' : 'address'
      const { max, remaining, ttlInSeconds: resetS } = state
      announce(reply, rateLimitWindowS, { policy, max, remaining, resetS })
      if (state.isExceeded) throw tooMany(max, rateLimitWindowS, resetS)
    }
  }

  app.decorate('spend', spend)
  app.addHook('onRequest', async (request, reply) => {
    if (request.routeOptions.config.always !== true) await spend(request, reply, 1)
  })
}
