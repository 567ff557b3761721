/**
 * npx tsx scripts/deploy/checks/rolling.ts: two replicas behind a stock balancer under load; each is replaced as a roll-out
 * does it (the new one up, SIGTERM to the old, wait for its end), then one is killed outright. Nothing may be lost but what
 * the killed one held. Needs haproxy from the distribution's packages, and `npm run build`.
 */
import { execFileSync } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'
import { asksFor } from './asks.ts'
import { type Mode, startBalancer } from './balancer.ts'
import { type Ask, inWords, type Loaded, startLoad } from './load.ts'
import { freePort, type Replica, startReplica } from './replica.ts'
import { finish, must, note } from './verdict.ts'

const settings = { RATE_LIMIT_MAX: '0', EVENT_LOOP_DELAY_MAX_MS: '0', DRAIN_MS: '3000', WORKERS: '1' }
const PER_SECOND = Number(process.argv[2] ?? '15')
const asks = asksFor('chooseCable')
let turn = 0
const next = () => asks[turn++ % asks.length] as Ask

/** Everything that did not come back as an answer of the service, late ones too. */
const lost = ({ sent, answers }: Loaded) => sent - (answers['200'] ?? 0)

async function rollOut(mode: Mode): Promise<void> {
  // A slot more than replicas: the new one starts before the old one goes.
  const ports = [await freePort(), await freePort(), await freePort()] as const
  const replicas: Replica[] = [
    await startReplica(settings, { port: ports[0] }),
    await startReplica(settings, { port: ports[1] })
  ]
  const balancer = await startBalancer(mode, ports)
  for (const { port } of replicas) await balancer.sees(port, true)
  await balancer.sees(ports[2], false)
  const load = startLoad(balancer.port, PER_SECOND, next)
  await pause(2_000)
  const ends: (number | string)[] = []
  let spare: number = ports[2]
  for (const old of [...replicas]) {
    await balancer.sees(spare, false)
    replicas.push(await startReplica(settings, { port: spare }))
    await balancer.sees(spare, true)
    replicas.splice(replicas.indexOf(old), 1)
    ends.push(await old.end('SIGTERM'))
    spare = old.port
  }
  await pause(1_000)
  const seen = await load.stop()
  note(inWords(seen))
  must(lost(seen) === 0, `${mode}: both replicas replaced under load, nothing lost`)
  must(
    ends.every(end => end === 0),
    `${mode}: each stopped with 0`
  )
  const [first, second] = replicas
  if (first === undefined || second === undefined) return
  const during = startLoad(balancer.port, PER_SECOND, next)
  await pause(1_000)
  await first.end('SIGKILL')
  await pause(2_000)
  note(`one killed outright: ${inWords(await during.stop())}`)
  const after = startLoad(balancer.port, PER_SECOND, next)
  await pause(2_000)
  const carried = await after.stop()
  must(lost(carried) === 0, `${mode}: the other carries on: ${inWords(carried)}`)
  await second.end('SIGTERM')
  balancer.end()
}

try {
  execFileSync('haproxy', ['-v'])
} catch {
  console.log('SKIP  no haproxy here: it is in the packages of the distribution')
  process.exit(0)
}
for (const mode of ['http', 'tcp'] as const) await rollOut(mode)
finish()
