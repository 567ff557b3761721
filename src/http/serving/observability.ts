/** One log line a request, and the counts and times an operator watches (Prometheus text at /metrics). */
import { createServer, type Server } from 'node:http'
import type { FastifyInstance, FastifyReply } from 'fastify'
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { CautionCode } from '../../contract/cautions/catalogue.ts'
import { present } from '../../domain/present.ts'
import type { Work } from '../work/pool.ts'
import type { AnswerCall } from './operations/operation-routes.ts'
import type { Settings } from './settings.ts'

export interface Observed {
  /** Counts what an operation answered, in this thread or a worker, alone or in a batch. */
  readonly counted: (answer: AnswerCall) => AnswerCall
}

const seconds = [0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 20]

function meters(registry: Registry, work: Work) {
  const registers = [registry]
  new Gauge({
    name: 'cabinbass_work_waiting',
    help: 'Heavy calls waiting for a worker thread',
    registers,
    collect() {
      this.set(work.waiting())
    }
  })
  return {
    requests: new Histogram({
      name: 'cabinbass_request_seconds',
      help: 'Time from the request line to the end of the answer',
      labelNames: ['method', 'route', 'status'] as const,
      buckets: seconds,
      registers
    }),
    results: new Counter({
      name: 'cabinbass_results_total',
      help: 'Calculations by operation and outcome',
      labelNames: ['operation', 'outcome'] as const,
      registers
    }),
    cautions: new Counter({
      name: 'cabinbass_cautions_total',
      help: 'Cautions given, by code',
      labelNames: ['code'] as const,
      registers
    })
  }
}

function counting(answer: AnswerCall, { results, cautions }: ReturnType<typeof meters>): AnswerCall {
  return async (operation, ...rest) => {
    const labels = { operation: operation.operationId }
    try {
      const found = await answer(operation, ...rest)
      results.inc({ ...labels, outcome: 'answered' })
      for (const code of found.cautions as readonly CautionCode[]) cautions.inc({ code })
      return found
    } catch (error) {
      results.inc({ ...labels, outcome: String((error as { code?: unknown }).code ?? 'internal') })
      throw error
    }
  }
}

function logLine(app: FastifyInstance, reply: FastifyReply): void {
  const { elapsedTime, request, statusCode } = reply
  const { method, routeOptions, apiKeyHolder } = request
  const line = {
    method,
    route: routeOptions.url ?? 'unknown',
    status: statusCode,
    ms: Math.round(elapsedTime * 10) / 10,
    bytes: Number(reply.getHeader('content-length') ?? 0),
    ...present({ holder: apiKeyHolder })
  }
  if (routeOptions.config.always === true) app.log.debug({ reqId: request.id, ...line }, 'answered')
  else request.log.info(line, 'answered')
}

/** A port of its own keeps the figures from whoever may call the service. */
function apart(registry: Registry, app: FastifyInstance, { metricsPort, host }: Settings): Server {
  const server = createServer(async (request, response) => {
    const here = request.url === '/metrics' && request.method === 'GET'
    response.writeHead(here ? 200 : 404, { 'content-type': here ? registry.contentType : 'text/plain' })
    response.end(here ? await registry.metrics() : 'only /metrics\n')
  })
  server.on('error', error => app.log.error({ err: error }, 'no metrics'))
  return server.listen(metricsPort, host)
}

export function registerObservability(app: FastifyInstance, settings: Settings, work: Work): Observed {
  const registry = new Registry()
  const meter = meters(registry, work)
  app.addHook('onResponse', (request, reply, done) => {
    const { method, routeOptions } = request
    const labels = { method, route: routeOptions.url ?? 'unknown', status: String(reply.statusCode) }
    meter.requests.observe(labels, reply.elapsedTime / 1000)
    logLine(app, reply)
    done()
  })
  if (settings.metrics) {
    let server: Server | undefined
    app.addHook('onListen', async () => {
      collectDefaultMetrics({ register: registry, prefix: 'cabinbass_' })
      if (settings.metricsPort !== 0) server = apart(registry, app, settings)
    })
    app.addHook('onClose', async () => {
      server?.close()
    })
    if (settings.metricsPort === 0) {
      app.get('/metrics', { config: { always: true }, schema: { hide: true } }, async (_request, reply) =>
        reply
          .type(registry.contentType)
          .header('cache-control', 'no-store')
          .send(await registry.metrics())
      )
    }
  }
  return { counted: answer => counting(answer, meter) }
}
