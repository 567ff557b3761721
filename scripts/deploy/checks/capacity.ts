/**
 * npx tsx scripts/deploy/checks/capacity.ts [repetitions]: processor time of each operation and form, the calls a second a
 * core carries, and what a thousand shops need. Processor time, not wall time: other work on the machine hardly shows.
 */
import type { FastifyInstance } from 'fastify'
import { buildApp } from '../../../src/app.ts'
import { operations } from '../../../src/http/operations.ts'
import { inThisProcess } from '../../../test/support/work-here.ts'
import { asksFor } from './asks.ts'
import { type Ask, percentile } from './load.ts'

const repetitions = Number(process.argv[2] ?? '5')

async function cpuMs(app: FastifyInstance, { path, body, accept }: Ask): Promise<number | undefined> {
  const headers = { 'content-type': 'application/json', accept: accept ?? 'application/json' }
  const before = process.cpuUsage()
  const { statusCode } = await app.inject({ method: 'POST', url: path, headers, payload: body })
  const { user, system } = process.cpuUsage(before)
  return statusCode === 200 ? (user + system) / 1000 : undefined
}

/** Median over examples and repetitions, warm. */
async function median(app: FastifyInstance, asks: readonly Ask[]): Promise<number> {
  const times: number[] = []
  for (let run = 0; run <= repetitions; run++) {
    for (const ask of asks) {
      const ms = await cpuMs(app, ask)
      if (run > 0 && ms !== undefined) times.push(ms)
    }
  }
  return percentile(times, 0.5)
}

const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0, work: inThisProcess })
await app.ready()
const costs = new Map<string, number>()
for (const { operationId } of operations) {
  const all = asksFor(operationId)
  for (const form of new Set(all.map(({ accept = 'application/json' }) => accept))) {
    const asks = all.filter(({ accept = 'application/json' }) => accept === form)
    const ms = await median(app, asks)
    if (form === 'application/json') costs.set(operationId, ms)
    console.log(
      `${operationId.padEnd(26)} ${form.padEnd(18)} ${ms.toFixed(1).padStart(8)} ms ${(1000 / ms).toFixed(ms > 100 ? 1 : 0).padStart(6)} a second a core`
    )
  }
}

/** What a shop asks on a working day; judgement, no source. Give your own. */
const day = {
  planSystem: 20,
  searchDesigns: 3,
  sizeEnclosure: 20,
  computeResponse: 60,
  layOutBox: 20,
  chooseCable: 60,
  rateFuse: 30
}
const HOURS = 9
const PEAK = 4
const SHOPS = 1_000
const shopMs = Object.entries(day).reduce((sum, [operationId, calls]) => sum + calls * (costs.get(operationId) ?? 0), 0)
const cores = (SHOPS * shopMs * PEAK) / (HOURS * 3_600_000)
const pods = Math.ceil(cores / 0.6)
console.log(`\na shop: ${JSON.stringify(day)}: ${(shopMs / 1000).toFixed(1)} s of a core a day`)
console.log(
  `${SHOPS} shops over ${HOURS} h, at ${PEAK} times the mean: ${cores.toFixed(1)} cores busy, ${pods} ${pods === 1 ? 'pod' : 'pods'} of one core at 60 %`
)
await app.close()
