/** Limits that replicas share, with a Redis server as the distribution packages it. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { once } from 'node:events'
import { type AddressInfo, connect, createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { setTimeout as pause } from 'node:timers/promises'
import type { FastifyInstance } from 'fastify'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../src/app.ts'
import { coils, quiet } from '../support/service.ts'

function isInstalled(): boolean {
  try {
    execFileSync('redis-server', ['--version'])
    return true
  } catch {
    return false
  }
}
const installed = isInstalled()

let port: number
let server: ChildProcess | undefined
const url = () => `redis://127.0.0.1:${port}`

async function freePort(): Promise<number> {
  const taken = createServer().listen(0, '127.0.0.1')
  await once(taken, 'listening')
  const { port } = taken.address() as AddressInfo
  await new Promise(done => taken.close(done))
  return port
}

const answers = () =>
  new Promise<boolean>(resolve => {
    const socket = connect(port, '127.0.0.1')
    socket.on('connect', () => resolve(true)).on('error', () => resolve(false))
    socket.on('connect', () => socket.destroy())
  })

async function startRedis(): Promise<void> {
  const options = ['--port', String(port), '--bind', '127.0.0.1', '--save', '', '--dir', tmpdir()]
  server = spawn('redis-server', options, { stdio: 'ignore' })
  while (!(await answers())) await pause(20)
}
async function stopRedis(): Promise<void> {
  if (server === undefined) return
  const gone = once(server, 'exit')
  server.kill('SIGTERM')
  await gone
  server = undefined
}

const replicas: FastifyInstance[] = []
async function replica(options: Parameters<typeof buildApp>[0]): Promise<FastifyInstance> {
  const app = await buildApp({ ...quiet, ...options })
  await app.ready()
  replicas.push(app)
  return app
}
const call = async (app: FastifyInstance | undefined) =>
  (await app?.inject({ method: 'POST', url: coils.url, payload: coils.body, remoteAddress: '192.0.2.7' }))?.statusCode

async function statuses(apps: readonly FastifyInstance[], calls: number): Promise<(number | undefined)[]> {
  const seen = []
  for (let n = 0; n < calls; n++) seen.push(await call(apps[n % apps.length]))
  return seen
}

it.skipIf(installed)('shared limits were not tried: no redis-server here', () => {})

describe.skipIf(!installed)('limits in a Redis', () => {
  beforeAll(async () => {
    port = await freePort()
    await startRedis()
  })
  afterEach(async () => {
    for (const app of replicas.splice(0)) await app.close()
  })
  afterAll(stopRedis)

  it('are one for all replicas', async () => {
    const limits = { rateLimitMax: 4, rateLimitRedis: url() }
    const both = [await replica(limits), await replica(limits)]
    expect(await statuses(both, 6)).toEqual([200, 200, 200, 200, 429, 429])
  })

  it('are per process without one', async () => {
    const both = [await replica({ rateLimitMax: 4 }), await replica({ rateLimitMax: 4 })]
    expect(await statuses(both, 6)).toEqual([200, 200, 200, 200, 200, 200])
  })

  it('hold per process while Redis is away, and are shared again after', async () => {
    const app = await replica({ rateLimitMax: 2, rateLimitWindowS: 4, rateLimitRedis: url() })
    await stopRedis()
    expect(await statuses([app], 4)).toEqual([200, 200, 429, 429])
    await startRedis()
    // Longer than the client waits before it tries again, and than the window.
    await pause(4_500)
    const other = await replica({ rateLimitMax: 2, rateLimitWindowS: 4, rateLimitRedis: url() })
    expect(await statuses([app, other], 3)).toEqual([200, 200, 429])
  })
})
