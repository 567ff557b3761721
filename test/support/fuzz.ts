/** Throws requests at one operation and holds every answer against the committed contract. */
import type { FastifyInstance } from 'fastify'
import { committed, contractFaults, isKnownField, pointsAt, requestSchema } from './contract-judge.ts'
import { brokenBody, nearExample, pick, type Random, seeded, valueFor } from './random-requests.ts'

export interface FuzzTarget {
  readonly path: string
  readonly examples: Readonly<Record<string, { readonly request: unknown }>>
}

export interface FuzzReport {
  requests: number
  readonly statuses: Record<number, number>
  slowestMs: number
  slowest: string
  /** What broke the contract, with the body that did it. */
  readonly faults: string[]
}

function pointerFaults(
  path: string,
  body: string,
  errors: readonly { pointer: string; code: string }[] = []
): string[] {
  let request: unknown
  try {
    request = JSON.parse(body)
  } catch {
    return []
  }
  return errors
    .filter(({ pointer, code }) => {
      if (pointer === '' || pointsAt(request, pointer) || pointer.length >= 300) return false
      return code === 'unknown-field' || !isKnownField(path, pointer)
    })
    .map(({ pointer, code }) => `pointer ${pointer} of ${code} leads nowhere`)
}

/** What is wrong with an answer by the committed contract. */
// biome-ignore lint/suspicious/noExplicitAny: an answer is whatever came back
export function answerFaults(path: string, status: number, type: string, answer: any, body: string): string[] {
  if (committed.paths[path].post.responses[status] === undefined) return [`status ${status} is not in the contract`]
  if (status >= 500 && status !== 503) return [`status ${status}`]
  const shape = contractFaults(path, status, type, answer)
  const wrongShape =
    Array.isArray(shape) && shape.length === 0 ? [] : [`against the contract: ${JSON.stringify(shape)}`]
  const text = JSON.stringify(answer)
  const internals =
    status >= 400 && /\\n\s+at |node_modules|\/src\/|file:\/\/|\.ts:\d/.test(text) ? ['shows internals'] : []
  // A merge patch takes a field away by null (RFC 7396).
  const apart = JSON.stringify(answer, (name, value) => (name === 'patch' ? undefined : value))
  const nulls = /[:[,]null[,\]}]/.test(apart) && status === 200 ? ['holds null'] : []
  return [...wrongShape, ...internals, ...nulls, ...pointerFaults(path, body, answer.errors)]
}

async function one(
  app: FastifyInstance,
  path: string,
  body: string,
  report: FuzzReport,
  twice: boolean
): Promise<void> {
  const send = () =>
    app.inject({ method: 'POST', url: path, headers: { 'content-type': 'application/json' }, payload: body })
  const start = performance.now()
  const reply = await send()
  const ms = performance.now() - start
  report.requests++
  report.statuses[reply.statusCode] = (report.statuses[reply.statusCode] ?? 0) + 1
  if (ms > report.slowestMs) Object.assign(report, { slowestMs: ms, slowest: body })
  const type = String(reply.headers['content-type'])
  const faults = answerFaults(path, reply.statusCode, type, JSON.parse(reply.body), body)
  if (twice && reply.statusCode === 200 && (await send()).body !== reply.body)
    faults.push('another answer the second time')
  for (const fault of faults) report.faults.push(`${fault} ← ${body.slice(0, 3000)}`)
}

/** A third by pure chance from the schema, a third near an example, a third broken. */
export async function fuzz(app: FastifyInstance, target: FuzzTarget, count: number, seed: number): Promise<FuzzReport> {
  const { path, examples } = target
  const random: Random = seeded(seed)
  const report: FuzzReport = { requests: 0, statuses: {}, slowestMs: 0, slowest: '', faults: [] }
  const requests = Object.values(examples).map(({ request }) => request)
  for (let n = 0; n < count; n++) {
    const example = pick(random, requests)
    const kind = n % 3
    const body =
      kind === 0
        ? JSON.stringify(valueFor(requestSchema(path), random, random()))
        : kind === 1
          ? JSON.stringify(nearExample(path, example, random))
          : brokenBody(path, example, random)
    await one(app, path, body, report, kind < 2)
  }
  return report
}
