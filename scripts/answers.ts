/**
 * Shows that a change of the code changed no answer.
 * tsx scripts/answers.ts write FILE [requests an operation] [seed]   notes requests with a digest of each answer
 * tsx scripts/answers.ts compare FILE                                 asks the same again, prints what differs, exits 1 if anything does
 */
import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import type { FastifyInstance } from 'fastify'
import { buildApp } from '../src/app.ts'
import { operations } from '../src/http/operations.ts'
import { nearExample, pick, seeded } from '../test/support/random-requests.ts'

interface Noted {
  readonly path: string
  readonly body: string
  readonly status: number
  readonly digest: string
}

const MOST_AGAIN = 5

async function noted(app: FastifyInstance, path: string, body: string): Promise<Noted> {
  const asked = () =>
    app.inject({
      method: 'POST',
      url: `${path}?digits=full&basis=true`,
      headers: { 'content-type': 'application/json', 'x-request-id': 'answers' },
      payload: body
    })
  // 503 tells of a busy machine, not of the code
  let reply = await asked()
  for (let again = 0; reply.statusCode === 503 && again < MOST_AGAIN; again++) reply = await asked()
  return {
    path,
    body,
    status: reply.statusCode,
    digest: createHash('sha256')
      .update(reply.body.replace(/"instance":"[^"]*"/, ''))
      .digest('hex')
  }
}

function* requests(count: number, seed: number): Generator<{ path: string; body: string }> {
  const random = seeded(seed)
  for (const { path, examples, heavy = false } of operations) {
    const worked = Object.values(examples).map(({ request }) => request)
    for (const request of worked) yield { path, body: JSON.stringify(request) }
    for (let n = 0; n < (heavy ? Math.ceil(count / 6) : count); n++)
      yield { path, body: JSON.stringify(nearExample(path, pick(random, worked), random)) }
  }
}

const [mode, file = '', count = '150', seed = '1'] = process.argv.slice(2)
if ((mode !== 'write' && mode !== 'compare') || file === '') throw new Error('write FILE or compare FILE')
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })
await app.ready()
if (mode === 'write') {
  const lines: string[] = []
  for (const { path, body } of requests(Number(count), Number(seed)))
    lines.push(JSON.stringify(await noted(app, path, body)))
  writeFileSync(file, `${lines.join('\n')}\n`)
  console.log(`${lines.length} answers noted`)
} else {
  const before = readFileSync(file, 'utf8')
    .trim()
    .split('\n')
    .map(line => JSON.parse(line) as Noted)
  let differ = 0
  for (const { path, body, status, digest } of before) {
    const now = await noted(app, path, body)
    if (now.digest === digest) continue
    differ++
    console.log(`${path} ${status} → ${now.status}: ${body.slice(0, 1000)}`)
  }
  console.log(`${before.length} answers asked again, ${differ} differ`)
  process.exitCode = differ === 0 ? 0 : 1
}
await app.close()
