/** Sheds load before the event loop suffers. A busy loop is not a slow loop: only its delay counts, never its utilisation. */

import underPressure from '@fastify/under-pressure'
import type { FastifyInstance } from 'fastify'
import { say } from '../../domain/say.ts'
import { Refusal } from '../wire/problem/refusal.ts'
import type { Settings } from './settings.ts'

declare module 'fastify' {
  interface FastifyInstance {
    isOverloaded: () => boolean
  }
}

export async function registerOverload(app: FastifyInstance, { eventLoopDelayMaxMs }: Settings): Promise<void> {
  if (eventLoopDelayMaxMs === 0) {
    app.decorate('isOverloaded', () => false)
    return
  }
  await app.register(underPressure, {
    maxEventLoopDelay: eventLoopDelayMaxMs,
    sampleInterval: 500,
    pressureHandler: async request => {
      if (request.routeOptions.config.always === true) return
      throw new Refusal('overloaded', say('service.too-busy'), { headers: { 'retry-after': '2' } })
    }
  })
  app.decorate('isOverloaded', () => app.isUnderPressure())
}
