/**
 * npx tsx scripts/deploy/checks/shared-limits.ts: two replicas as they are shipped, one Redis, one limit for both. The tests
 * try the same from the sources; a bundle can break it. Needs redis-server from the distribution's packages.
 */
import { execFileSync, spawn } from 'node:child_process'
import { setTimeout as pause } from 'node:timers/promises'
import { asksFor } from './asks.ts'
import { freePort, startReplica } from './replica.ts'
import { finish, must } from './verdict.ts'

try {
  execFileSync('redis-server', ['--version'])
} catch {
  console.log('SKIP  no redis-server here: it is in the packages of the distribution')
  process.exit(0)
}
const port = await freePort()
const redis = spawn('redis-server', ['--port', String(port), '--bind', '127.0.0.1', '--save', ''], { stdio: 'ignore' })
await pause(1_000)
const settings = {
  RATE_LIMIT_MAX: '4',
  RATE_LIMIT_REDIS_URL: `redis://127.0.0.1:${port}`,
  WORKERS: '1',
  EVENT_LOOP_DELAY_MAX_MS: '0'
}
const replicas = [await startReplica(settings), await startReplica(settings)]
const [ask] = asksFor('wireCoils')
const statuses: number[] = []
for (let call = 0; call < 6; call++) {
  const { status } = await fetch(`http://127.0.0.1:${replicas[call % 2]?.port}${ask?.path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: ask?.body ?? ''
  })
  statuses.push(status)
}
must(statuses.join() === '200,200,200,200,429,429', `a limit of 4 holds over both: ${statuses.join(' ')}`)
for (const replica of replicas) must((await replica.end('SIGTERM')) === 0, 'stops with 0')
redis.kill('SIGTERM')
finish()
