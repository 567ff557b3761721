/**
 * npx tsx scripts/deploy/checks/overload.ts [seconds]: finds what one replica carries of heavy calls, then asks three times
 * as much beside a trickle of small calls. Who is refused must hear so at once, small calls must go on, and the calls that are
 * answered must be about as many as before.
 */
import { setTimeout as pause } from 'node:timers/promises'
import { asksFor } from './asks.ts'
import { type Ask, inWords, type Loaded, percentile, startLoad } from './load.ts'
import { startReplica } from './replica.ts'
import { finish, must, note } from './verdict.ts'

const seconds = Number(process.argv[2] ?? '20')
const replica = await startReplica({ RATE_LIMIT_MAX: '0', WORKERS: '1', WORK_TIMEOUT_MS: '20000' })
const first = ([ask]: readonly Ask[]): Ask => {
  if (ask === undefined) throw new TypeError('an operation without an example')
  return ask
}
const sizing = first(asksFor('sizeEnclosure'))
const cable = first(asksFor('chooseCable'))

async function answeredPerSecond(perSecond: number): Promise<{ rate: number; seen: Loaded; small: Loaded }> {
  const heavy = startLoad(replica.port, perSecond, () => sizing, 200)
  const small = startLoad(replica.port, 5, () => cable, 5)
  await pause(seconds * 1_000)
  const answered = heavy.seen.answers['200'] ?? 0
  return { rate: answered / seconds, seen: await heavy.stop(), small: await small.stop() }
}

// One after the other, for as long as a search takes: what the worker alone can do.
await answeredPerSecond(2)
const from = performance.now()
let calls = 0
for (; performance.now() - from < seconds * 1_000; calls++) {
  const { ok } = await fetch(`http://127.0.0.1:${replica.port}${sizing.path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: sizing.body
  })
  if (!ok) break
}
const capacity = calls / seconds
note(`one replica carries ${capacity.toFixed(1)} heavy calls a second, one after the other`)
const before = await answeredPerSecond(capacity * 0.5)
const { rate, seen, small } = await answeredPerSecond(capacity * 3)
note(`at half: ${inWords(before.seen)}; small ones ${inWords(before.small)}`)
note(`at three times: ${inWords(seen)}; small ones ${inWords(small)}`)
must(
  Object.keys(seen.answers).every(what => /^(200|503)$/.test(what)),
  'every heavy call is answered or told to come back'
)
must(rate > 0.5 * capacity, `${rate.toFixed(1)} a second are still answered`)
must(
  Object.keys(small.answers).every(what => what === '200'),
  'every small call is answered'
)
must(percentile(small.latencyMs, 0.99) < 2_000, 'small calls within 2 s')
must((await replica.end('SIGTERM')) === 0, 'stops with 0')
finish()
