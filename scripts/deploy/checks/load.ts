/** A steady load that does not wait for answers: requests leave at their time, every answer is looked at, none is sent again. */
import { Agent, request } from 'node:http'
import { setTimeout as pause } from 'node:timers/promises'

export interface Ask {
  readonly path: string
  readonly body: string
  readonly accept?: string
}

export interface Loaded {
  sent: number
  /** By status, or by what broke the connection. */
  readonly answers: Record<string, number>
  readonly latencyMs: number[]
}

export interface Load {
  readonly seen: Loaded
  /** No more requests; waits for those under way. */
  readonly stop: () => Promise<Loaded>
}

const WAIT_MS = 60_000

export function startLoad(port: number, perSecond: number, next: () => Ask, connections = 20): Load {
  const agent = new Agent({ keepAlive: true, maxSockets: connections })
  const seen: Loaded = { sent: 0, answers: {}, latencyMs: [] }
  let open = 0
  const count = (what: string) => {
    seen.answers[what] = (seen.answers[what] ?? 0) + 1
    open--
  }
  const send = ({ path, body, accept }: Ask) => {
    seen.sent++
    open++
    const from = performance.now()
    const headers = {
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(body),
      accept: accept ?? '*/*'
    }
    const call = request({ host: '127.0.0.1', port, path, method: 'POST', agent, headers, timeout: WAIT_MS }, reply => {
      reply.resume()
      reply.on('end', () => {
        seen.latencyMs.push(performance.now() - from)
        count(String(reply.statusCode))
      })
      reply.on('error', () => count('cut off'))
    })
    call.on('error', error => count((error as NodeJS.ErrnoException).code ?? error.message))
    call.on('timeout', () => call.destroy())
    call.end(body)
  }
  const start = performance.now()
  let due = 0
  const timer = setInterval(() => {
    for (const wanted = ((performance.now() - start) / 1000) * perSecond; due < wanted; due++) send(next())
  }, 5)
  return {
    seen,
    stop: async () => {
      clearInterval(timer)
      for (const end = performance.now() + WAIT_MS; open > 0 && performance.now() < end; ) await pause(20)
      agent.destroy()
      return seen
    }
  }
}

export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((one, other) => one - other)
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN
}

export const inWords = ({ sent, answers, latencyMs }: Loaded): string =>
  `${sent} requests, ${JSON.stringify(answers)}, half within ${percentile(latencyMs, 0.5).toFixed(0)} ms, 99 % within ${percentile(latencyMs, 0.99).toFixed(0)} ms`
