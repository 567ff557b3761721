/** Redis for the counters of all replicas, where an operator names one. Loaded only then. */
import { once } from 'node:events'
import type { FastifyBaseLogger } from 'fastify'
import type { Redis } from 'ioredis'

/** A counter that answers later than this is no help: the caller waits for it. */
const PATIENCE_MS = 250
const START_MS = 1_000
const MOST_PAUSE_MS = 2_000

export async function sharedCounter(url: string, log: FastifyBaseLogger): Promise<Redis> {
  const { Redis } = await import('ioredis')
  const redis = new Redis(url, {
    commandTimeout: PATIENCE_MS,
    connectTimeout: START_MS,
    // A call is counted now or by this process; it never waits for Redis to come back.
    enableOfflineQueue: false,
    maxRetriesPerRequest: 0,
    retryStrategy: times => Math.min(times * 100, MOST_PAUSE_MS)
  })
  let away = false
  redis.on('ready', () => {
    if (away) log.info('limits are shared again')
    away = false
  })
  redis.on('error', (err: Error) => {
    if (!away) log.warn({ err }, 'limits are counted per process: Redis does not answer')
    away = true
  })
  // The first callers are counted like all others, where Redis is there at once; the start does not hang on it.
  await once(redis, 'ready', { signal: AbortSignal.timeout(START_MS) }).catch(() => undefined)
  return redis
}
