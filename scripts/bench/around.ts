/**
 * What a small request costs around its calculation: `npm run build`, then `npx tsx scripts/bench/around.ts [BLOCKS]`. Processor
 * time a request of the served process, beside a bare server of the same framework that reads the same body and sends the same
 * bytes from memory; both alive at once, blocks of requests over eight kept connections in turns, the least of the blocks.
 * "hot" is the operation alone, from the validated request to the text of the answer, in this process. Linux only.
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { operations } from '../../src/http/operations.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { timings } from './timing.ts'

interface Load {
  readonly url: string
  readonly method: 'POST'
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
  readonly connections: number
  readonly amount: number
}

/** It has no types of its own. */
const autocannon: (load: Load) => Promise<{ readonly non2xx: number; readonly errors: number }> = createRequire(
  import.meta.url
)('autocannon')

const US_A_TICK = 10_000
const BLOCK = 8_000
const options = { digits: 'six', basis: false } as const
const shown = ['wireCoils', 'computeCurrent', 'chooseCable', 'rateFuse', 'setUpSignal', 'matchAmplifier']

const small = operations
  .filter(({ operationId }) => shown.includes(operationId))
  .map((operation): { operation: Operation; request: unknown; text: string } => {
    const request = Object.values(operation.examples)[0]?.request
    return { operation, request, text: operation.answerText(request, options) }
  })

const bare = `import Fastify from 'fastify'
const app = Fastify()
const answers = JSON.parse(process.env.ANSWERS)
for (const [path, text] of Object.entries(answers)) {
  app.post(path, async (request, reply) => reply.type('application/json; charset=utf-8').send(text))
}
app.get('/health/ready', async () => 'ready')
await app.listen({ port: Number(process.env.PORT), host: '127.0.0.1' })`

async function started(args: readonly string[], port: number, more: NodeJS.ProcessEnv = {}) {
  const settings = { RATE_LIMIT_MAX: '100000000', EVENT_LOOP_DELAY_MAX_MS: '60000', METRICS_PORT: String(port + 100) }
  const env = { PATH: process.env.PATH, PORT: String(port), HOST: '127.0.0.1', ...settings, ...more }
  const child: ChildProcess = spawn(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'inherit'] })
  const url = `http://127.0.0.1:${port}`
  for (;;) {
    const ready = await fetch(`${url}/health/ready`).then(
      ({ ok }) => ok,
      () => false
    )
    if (ready) return { child, url, pid: child.pid ?? 0 }
    await pause(50)
  }
}

type Served = Awaited<ReturnType<typeof started>>

function processorUs(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? []
  return (Number(fields[11]) + Number(fields[12])) * US_A_TICK
}

async function block({ url, pid }: Served, { path }: Operation, request: unknown, amount: number): Promise<number> {
  const before = processorUs(pid)
  const { non2xx, errors } = await autocannon({
    url: url + path,
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(request),
    connections: 8,
    amount
  })
  if (non2xx + errors > 0) throw new Error(`${path}: ${non2xx} refused, ${errors} failed`)
  return (processorUs(pid) - before) / amount
}

const answers = Object.fromEntries(small.map(({ operation, text }) => [operation.path, text]))
const main = fileURLToPath(new URL('../../dist/main.js', import.meta.url))
const servers = [
  await started(['--input-type=module', '-e', bare], 3975, { ANSWERS: JSON.stringify(answers) }),
  await started([main], 3976)
] as const
// Warming up begins two seconds after listening and is through in ten.
await pause(10_000)

const blocks = Number(process.argv[2] ?? 4)
const rows: Record<string, Record<string, number>> = {}
for (const { operation, request } of small) {
  for (const server of servers) await block(server, operation, request, BLOCK)
  const taken = { bare: Number.POSITIVE_INFINITY, ours: Number.POSITIVE_INFINITY }
  for (let round = 0; round < blocks; round++) {
    taken.bare = Math.min(taken.bare, await block(servers[0], operation, request, BLOCK))
    taken.ours = Math.min(taken.ours, await block(servers[1], operation, request, BLOCK))
  }
  const [hot] = timings([{ name: 'hot', run: () => operation.answerText(request, options) }])
  const hotUs = hot?.minimum ?? 0
  rows[operation.operationId] = {
    'bare, µs': Math.round(taken.bare),
    'ours, µs': Math.round(taken.ours),
    'hot, µs': Math.round(hotUs),
    'around, µs': Math.round(taken.ours - taken.bare - hotUs),
    'goal, ours': Math.round(taken.bare + 20 + 2 * hotUs)
  }
}
console.table(rows)
for (const { child } of servers) child.kill('SIGKILL')
