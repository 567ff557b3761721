/** Calls the service without a socket and without threads, each of which would load the service again; one app for a test file. */
import type { FastifyInstance } from 'fastify'
import { buildApp } from '../../src/app.ts'
import { inThisProcess } from './work-here.ts'

let shared: Promise<FastifyInstance> | undefined

export function testApp(): Promise<FastifyInstance> {
  shared ??= buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0, work: inThisProcess })
  return shared
}

export interface Reply {
  readonly status: number
  readonly type: string
  // biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
  readonly body: any
}

/** POSTs a value as JSON, or a string as it stands. */
export async function post(url: string, body: unknown, contentType = 'application/json'): Promise<Reply> {
  const app = await testApp()
  const payload = typeof body === 'string' ? body : JSON.stringify(body)
  const {
    statusCode,
    headers,
    body: text
  } = await app.inject({ method: 'POST', url, headers: { 'content-type': contentType }, payload })
  return { status: statusCode, type: String(headers['content-type']), body: JSON.parse(text) }
}
