/** The process itself: a wrong setting stops it with a message, SIGTERM lets what runs finish. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { Agent, request } from 'node:http'
import path from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'

const root = path.resolve(import.meta.dirname, '..')
let service: ChildProcess | undefined
afterEach(() => service?.kill('SIGKILL'))

function started(environment: Record<string, string>): { child: ChildProcess; output: () => string } {
  const env = {
    PATH: process.env.PATH,
    HOST: '127.0.0.1',
    PORT: '0',
    METRICS: 'off',
    EVENT_LOOP_DELAY_MAX_MS: '0',
    ...environment
  }
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], { cwd: root, env, stdio: 'pipe' })
  let text = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', chunk => (text += String(chunk)))
  service = child
  return { child, output: () => text }
}

async function until<Value>(read: () => Value | undefined): Promise<Value> {
  for (;;) {
    const value = read()
    if (value !== undefined) return value
    await new Promise(resolve => setTimeout(resolve, 50))
  }
}

function post(
  port: number,
  agent: Agent,
  body: string,
  sendEnd: Promise<unknown>
): Promise<{ status: number; connection: string }> {
  return new Promise((resolve, reject) => {
    const headers = { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }
    const call = request(
      { port, host: '127.0.0.1', path: '/v1/coils/wiring', method: 'POST', headers, agent },
      response => {
        response.resume()
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, connection: String(response.headers.connection) })
        )
      }
    )
    call.on('error', reject)
    call.write(body.slice(0, 10))
    sendEnd.then(() => call.end(body.slice(10)), reject)
  })
}

describe('process', () => {
  it('names every wrong setting and exits with 1', async () => {
    const { child, output } = started({ PORT: 'http', CORS_ORIGIN: 'shop' })
    const [code] = await once(child, 'exit')
    expect(code).toBe(1)
    expect(output()).toContain('PORT=http: must be a whole number from 0 to 65535')
    expect(output()).toContain('CORS_ORIGIN=shop: must be')
    expect(output()).not.toMatch(/\bat .+\(/)
  })

  it('answers what is underway at SIGTERM, closes its connections and exits with 0', async () => {
    const { child, output } = started({ LOG_LEVEL: 'info', DRAIN_MS: '300' })
    const port = Number(await until(() => /listening at http:\/\/127\.0\.0\.1:(\d+)/.exec(output())?.[1]))
    const agent = new Agent({ keepAlive: true })
    const body = JSON.stringify({ driverCount: 2, coilsPerDriver: 1, coilOhm: 4 })
    const before = await post(port, agent, body, Promise.resolve())
    expect(before).toEqual({ status: 200, connection: 'keep-alive' })
    const draining = until(() => (output().includes('draining') ? true : undefined))
    const underway = post(port, agent, body, draining)
    await new Promise(resolve => setTimeout(resolve, 100))
    child.kill('SIGTERM')
    const exit = once(child, 'exit')
    await draining
    const ready = await fetch(`http://127.0.0.1:${port}/health/ready`)
    expect([ready.status, ready.headers.get('retry-after')]).toEqual([503, '5'])
    expect(await underway).toEqual({ status: 200, connection: 'close' })
    expect((await exit)[0]).toBe(0)
    agent.destroy()
  })
})
