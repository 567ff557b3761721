/** Live: the process runs. Ready: it may be sent requests. While draining every answer closes its connection. */
import type { FastifyInstance } from 'fastify'

declare module 'fastify' {
  interface FastifyInstance {
    /** From here on the service is unready and its connections end with their answer. */
    startDraining: () => void
  }
  interface FastifyContextConfig {
    /** Neither limited, nor shed, nor behind a key: health and metrics. */
    readonly always?: boolean
  }
}

export function registerHealth(app: FastifyInstance): void {
  let draining = false
  app.decorate('startDraining', () => {
    draining = true
  })
  app.addHook('onSend', (_request, reply, payload, done) => {
    if (draining) reply.header('connection', 'close')
    done(null, payload)
  })
  const config = { always: true }
  app.get('/health/live', { config, schema: { hide: true }, logLevel: 'warn' }, (_request, reply) =>
    reply.header('cache-control', 'no-store').send({ status: 'live' })
  )
  app.get('/health/ready', { config, schema: { hide: true }, logLevel: 'warn' }, (_request, reply) => {
    const ready = !draining && !app.isOverloaded()
    if (!ready) reply.header('retry-after', '5')
    return reply
      .code(ready ? 200 : 503)
      .header('cache-control', 'no-store')
      .send({ status: ready ? 'ready' : draining ? 'draining' : 'overloaded' })
  })
}
