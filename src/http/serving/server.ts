/** How the server itself behaves: request ids, time limits for slow senders, and answers to what is not even HTTP. */
import { randomUUID } from 'node:crypto'
import type { IncomingMessage, Server } from 'node:http'
import type { Socket } from 'node:net'
import { type FastifyBaseLogger, type FastifyHttpOptions, type FastifyServerOptions, LogController } from 'fastify'
import { type Problem, problem } from '../wire/problem/problem.ts'
import type { ProblemCode } from '../wire/problem/problem-kinds.ts'
import { answerError } from './problems.ts'
import { withoutBase } from './representation/base-path.ts'
import { plainHeaders } from './security.ts'
import type { Settings } from './settings.ts'

const idForm = /^[A-Za-z0-9._-]{8,128}$/

/** The caller's id if it is one, else a new one; the same in header, log and problem. */
function requestId(request: Pick<IncomingMessage, 'headers'>): string {
  const given = request.headers['x-request-id']
  return typeof given === 'string' && idForm.test(given) ? given : randomUUID()
}

const codeByParserFault: Readonly<Record<string, ProblemCode>> = {
  ERR_HTTP_REQUEST_TIMEOUT: 'too-slow',
  HPE_HEADER_OVERFLOW: 'headers-too-large'
}

const detailByCode: Partial<Record<ProblemCode, string>> = {
  'too-slow': 'The request did not arrive in time.',
  'headers-too-large': 'The request line and headers are larger than 16 KiB.'
}

/** What leaves on a bare socket, where no reply object exists. */
function rawAnswer(body: Problem): string {
  const id = randomUUID()
  const text = JSON.stringify({ ...body, instance: `/requests/${id}` })
  const headers = {
    ...plainHeaders,
    'content-type': 'application/problem+json; charset=utf-8',
    'content-length': String(Buffer.byteLength(text)),
    'cache-control': 'no-store',
    'x-request-id': id,
    connection: 'close'
  }
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`)
  return `HTTP/1.1 ${body.status} ${body.title}\r\n${lines.join('')}\r\n${text}`
}

function onParserFault(error: NodeJS.ErrnoException, socket: Socket): void {
  if (error.code === 'ECONNRESET' || socket.destroyed || !socket.writable) {
    socket.destroy()
    return
  }
  const code = codeByParserFault[error.code ?? ''] ?? 'malformed-http'
  socket.end(rawAnswer(problem(code, detailByCode[code] ?? 'The bytes received are no HTTP request.')))
}

function trusted(proxies: Settings['trustProxy']): NonNullable<FastifyServerOptions['trustProxy']> {
  if (proxies === false) return false
  return typeof proxies === 'number' ? (_address, hop) => hop < proxies : [...proxies]
}

const setLater = (): never => {
  throw new TypeError('a route stands before its compilers')
}

export function serverOptions(
  { basePath, bodyLimitBytes, trustProxy, workTimeoutMs }: Settings,
  log: FastifyBaseLogger | undefined
): FastifyHttpOptions<Server> {
  return {
    ...(log === undefined ? { logger: false } : { loggerInstance: log }),
    // One line an answer is written by observability.ts.
    logController: new LogController({ disableRequestLogging: true }),
    ...(basePath === '' ? {} : { rewriteUrl: withoutBase(basePath) }),
    bodyLimit: bodyLimitBytes,
    trustProxy: trusted(trustProxy),
    requestIdHeader: false,
    genReqId: requestId,
    // A whole request must arrive within 10 s, its headers within 8 s; Node looks every 2 s.
    requestTimeout: 10_000,
    // Longer than a batch may be silent.
    connectionTimeout: workTimeoutMs * 3 + 15_000,
    keepAliveTimeout: 65_000,
    // A missing Host is refused by host.ts, with a document.
    http: { headersTimeout: 8_000, connectionsCheckingInterval: 2_000, requireHostHeader: false },
    forceCloseConnections: 'idle',
    exposeHeadRoutes: true,
    allowErrorHandlerOverride: false,
    // validation.ts sets both before any route; the framework's own, which nobody calls, need not be loaded.
    schemaController: { compilersFactory: { buildValidator: setLater, buildSerializer: setLater } },
    return503OnClosing: false,
    // No path is longer than the headers: a long one is looked up like any other, behind limits, hooks and metrics.
    routerOptions: { maxParamLength: 16_384 },
    frameworkErrors: answerError,
    clientErrorHandler: onParserFault
  }
}
