/**
 * How long the small calls take while the dearest of each kind are asked fifty times at once: `npm run build`, then
 * `npx tsx scripts/bench/under-load.ts [operationId …]`. Wall time of health and of one small calculation every 20 ms, alone
 * and beside each kind; the same run says what of it is the machine's own.
 */
import { setTimeout as pause } from 'node:timers/promises'
import { asksFor } from '../deploy/checks/asks.ts'
import { type Ask, percentile } from '../deploy/checks/load.ts'
import { startReplica } from '../deploy/checks/replica.ts'

const AT_ONCE = 50
const EVERY_MS = 20
const ALONE_MS = 4_000
const MOST_MS = 20_000

const vented = JSON.stringify({
  driver: { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 480, reOhm: 3.4, xmaxMm: 12, powerW: 400 },
  enclosure: { kind: 'vented', rear: { netVolumeL: 60, port: { areaCm2: 80, lengthMm: 250 } } },
  source: { voltageV: 30 },
  limits: {},
  frequenciesHz: { fromHz: 10, toHz: 300, points: 2000 }
})
const unlike = JSON.stringify({ driverCount: 6, coilsPerDriver: 1, coilsOhm: [1, 2, 3, 4, 5, 6] })

/** The dearest of each kind, the last still on the thread that answers everybody. */
const kinds: Readonly<Record<string, Ask>> = {
  ...Object.fromEntries(
    [
      'planSystem',
      'searchDesigns',
      'layOutBox',
      'nestPanels',
      'computeTolerance',
      'computeFeeder',
      'computeCircuit'
    ].map(id => [id, asksFor(id)[0] as Ask])
  ),
  'plan, PDF': { ...(asksFor('planSystem')[0] as Ask), accept: 'application/pdf' },
  'folded slot': asksFor('layOutBox').findLast(({ body }) => body.includes('"slopeDeg"')) as Ask,
  'response, 2000 points at work': { path: '/v1/enclosures/response', body: vented },
  'six unlike coils': { path: '/v1/coils/wiring', body: unlike },
  'five unlike coils': { path: '/v1/coils/wiring', body: unlike.replace(',6]', ']').replace('Count":6', 'Count":5') }
}

const replica = await startReplica({ RATE_LIMIT_MAX: '0' })
const at = `http://127.0.0.1:${replica.port}`
const small = asksFor('computeCurrent')[0] as Ask

async function send({ path, body, accept = 'application/json' }: Ask): Promise<number> {
  const headers = { 'content-type': 'application/json', accept }
  const reply = await fetch(`${at}${path}`, { method: 'POST', headers, body })
  await reply.arrayBuffer()
  return reply.status
}

/** Asked on time whatever is still open, until `over`. */
async function latencies(ask: () => Promise<unknown>, over: () => boolean): Promise<readonly number[]> {
  const taken: Promise<number>[] = []
  while (!over()) {
    const from = performance.now()
    taken.push(ask().then(() => performance.now() - from))
    await pause(EVERY_MS)
  }
  return Promise.all(taken)
}

async function beside(name: string, over: () => boolean, answers: Readonly<Record<string, number>>): Promise<void> {
  const [health, current] = await Promise.all([
    latencies(async () => (await fetch(`${at}/health/live`)).arrayBuffer(), over),
    latencies(() => send(small), over)
  ])
  const ms = (values: readonly number[], share: number) => percentile(values, share).toFixed(0).padStart(5)
  console.log(
    `${name.padEnd(32)} health ${ms(health, 0.5)} ${ms(health, 0.99)}  small ${ms(current, 0.5)} ${ms(current, 0.99)} ms  ${JSON.stringify(answers)}`
  )
}

const until = (end: number) => () => performance.now() > end
await pause(15_000)
await beside('alone', until(performance.now() + ALONE_MS), {})
const asked = process.argv.slice(2)
for (const [name, ask] of Object.entries(kinds)) {
  if (asked.length > 0 && !asked.includes(name)) continue
  const answers: Record<string, number> = {}
  let open = AT_ONCE
  for (let n = 0; n < AT_ONCE; n++) {
    void send(ask).then(status => {
      answers[status] = (answers[status] ?? 0) + 1
      open--
    })
  }
  const late = until(performance.now() + MOST_MS)
  await beside(name, () => open === 0 || late(), answers)
  while (open > 0) await pause(50)
}
await replica.end('SIGTERM')
