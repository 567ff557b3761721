/** Puts one request to the service and says everything that is wrong with what comes back. */
import type { FastifyInstance } from 'fastify'
import { generalLaws } from '../../src/http/operations/general-laws.ts'
import type { Law } from '../../src/http/wire/law.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { answerFaults } from '../../test/support/fuzz.ts'
import type { Random } from '../../test/support/random-requests.ts'

export const kinds = ['crash', 'contract', 'law', 'slow'] as const

export interface Finding {
  readonly operationId: string
  readonly kind: (typeof kinds)[number]
  /** Of a broken law. */
  readonly law?: string
  /** As JSON, or the text of a body that is none. */
  readonly request: unknown
  /** The second question of a law. */
  readonly varied?: unknown
  readonly detail: string
}

export interface Reply {
  readonly status: number
  readonly type: string
  readonly body: string
  readonly cpuMs: number
}

export async function asked(app: FastifyInstance, { path }: Operation, request: unknown, query = ''): Promise<Reply> {
  const payload = typeof request === 'string' ? request : JSON.stringify(request)
  const before = process.cpuUsage()
  const reply = await app.inject({
    method: 'POST',
    url: `${path}${query}`,
    headers: { 'content-type': 'application/json' },
    payload
  })
  const { user, system } = process.cpuUsage(before)
  return {
    status: reply.statusCode,
    type: String(reply.headers['content-type']),
    body: reply.body,
    cpuMs: (user + system) / 1000
  }
}

/** What the contract forbids in one answer. */
export function replyFindings({ path, operationId }: Operation, request: unknown, reply: Reply): Finding[] {
  const { status, type, body } = reply
  const text = typeof request === 'string' ? request : JSON.stringify(request)
  if (status >= 500 && status !== 503) return [{ operationId, kind: 'crash', request, detail: `${status} ${body}` }]
  return answerFaults(path, status, type, JSON.parse(body), text).map(detail => ({
    ...{ operationId, kind: 'contract', request, detail }
  }))
}

/** @returns the finding where a law is broken between a request that was answered and its variation */
export async function lawFinding(
  app: FastifyInstance,
  operation: Operation,
  law: Law,
  first: { readonly request: unknown; readonly reply: Reply },
  variation: (told: { request: unknown; result: unknown }) => unknown
): Promise<Finding | undefined> {
  const { request, reply } = first
  const told = { request, result: JSON.parse(reply.body).result }
  const found = { operationId: operation.operationId, kind: 'law', law: law.id, request } as const
  if (law.varied === undefined) {
    const detail = law.broken(told, told)
    return detail === undefined ? undefined : { ...found, detail }
  }
  const varied = variation(told)
  if (varied === undefined) return undefined
  const second = await asked(app, operation, varied)
  if (second.status !== 200) {
    const refused = law.staysAnswered === true
    return refused ? { ...found, varied, detail: `answered, then ${second.status} ${second.body}` } : undefined
  }
  const detail = law.broken(told, { request: varied, result: JSON.parse(second.body).result })
  return detail === undefined ? undefined : { ...found, varied, detail }
}

/** Laws of the operation and one of those that hold for all, tried on a request that was answered. */
export async function lawFindings(
  app: FastifyInstance,
  operation: Operation,
  first: { readonly request: unknown; readonly reply: Reply },
  chance: Random
): Promise<Finding[]> {
  const findings: Finding[] = []
  for (const law of operation.laws) {
    const found = await lawFinding(app, operation, law, first, told => law.varied?.(told, chance))
    if (found !== undefined) findings.push(found)
  }
  const general = generalLaws[Math.floor(chance() * generalLaws.length)]
  const found = general && (await generalFinding(app, operation, general, first))
  return found === undefined ? findings : [...findings, found]
}

export async function generalFinding(
  app: FastifyInstance,
  operation: Operation,
  law: (typeof generalLaws)[number],
  { request, reply }: { readonly request: unknown; readonly reply: Reply }
): Promise<Finding | undefined> {
  const second = await asked(app, operation, request, law.query)
  const detail = second.status === 200 ? law.broken(reply.body, second.body) : `answered, then ${second.status}`
  return detail === undefined
    ? undefined
    : { operationId: operation.operationId, kind: 'law', law: law.id, request, detail }
}
