/**
 * npx tsx scripts/deploy/checks/memory.ts [seconds] [MiB]: a replica with the heaps of the manifests, held to the memory of
 * the manifests, under every operation in every form; then level memory over the second half.
 */
import { setTimeout as pause } from 'node:timers/promises'
import { mixedAsks } from './asks.ts'
import { inWords, percentile, startLoad } from './load.ts'
import { boundMemory } from './memory-bound.ts'
import { startReplica } from './replica.ts'
import { finish, must, note } from './verdict.ts'

const [seconds = '120', mostMb = '512', perSecond = '6'] = process.argv.slice(2)
const bound = boundMemory(Number(mostMb))
const settings = {
  WORKERS: '1',
  WORKER_HEAP_MB: '160',
  NODE_OPTIONS: '--max-old-space-size=192',
  RATE_LIMIT_MAX: '0'
}
const replica = await startReplica(settings, bound === undefined ? {} : { group: bound.group })
note(bound === undefined ? 'no control group here: resident memory is read, not held' : `held to ${mostMb} MiB`)
note(`${replica.residentMb().toFixed(0)} MiB when ready`)

const load = startLoad(replica.port, Number(perSecond), mixedAsks(1, 0.15))
const readings: number[] = []
for (let second = 0; second < Number(seconds); second++) {
  await pause(1_000)
  readings.push(replica.residentMb())
}
const seen = await load.stop()
const half = readings.slice(readings.length / 2)
const quarter = half.slice(0, half.length / 2)
const last = half.slice(half.length / 2)
note(inWords(seen))
note(
  `memory ${readings
    .filter((_, second) => second % 15 === 14)
    .map(mb => mb.toFixed(0))
    .join(' ')} MiB`
)
if (bound !== undefined) note(`peak of the group ${bound.peakMb().toFixed(0)} MiB`)
must(
  Object.keys(seen.answers).every(what => /^(200|422|503)$/.test(what)),
  'every call is answered, refused or told to wait'
)
must(Math.max(...readings) < Number(mostMb), `never above ${mostMb} MiB: ${Math.max(...readings).toFixed(0)}`)
must(
  percentile(last, 0.5) < percentile(quarter, 0.5) * 1.1,
  `level: ${percentile(quarter, 0.5).toFixed(0)}, then ${percentile(last, 0.5).toFixed(0)} MiB`
)
must((await replica.end('SIGTERM')) === 0, 'stops with 0')
bound?.remove()
finish()
