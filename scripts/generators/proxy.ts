/** A proxy that holds each call and its answer against the contract, and complains of what is not in it. */
import { spawn } from 'node:child_process'
import path from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { type Call, send } from './calls.ts'
import type { Place } from './programs.ts'

const PORT = 4_017
const WAIT_S = 40

async function listening(base: string): Promise<void> {
  for (let second = 0; second < WAIT_S; second++) {
    const up = await fetch(`${base}/v1/problems`).then(
      ({ status }) => status < 500,
      () => false
    )
    if (up) return
    await pause(1_000)
  }
  throw new Error('the proxy does not start')
}

/** This proxy holds every `+json` against the schema of `application/json`, whatever stands before the plus. */
const misread = ({ type }: Call) => type.endsWith('+json') && type !== 'application/problem+json'

/** What the proxy says of an answer; a request that is wrong on purpose may be complained of, its answer not. */
async function complaint(call: Call, base: string): Promise<string | undefined> {
  const response = await send(call, base)
  const said = response.headers.get('sl-violations')
  await response.arrayBuffer()
  if (response.status !== call.status) return `${call.method} ${call.url}: ${response.status} for ${call.status}`
  const ofAnswer = JSON.parse(said ?? '[]').filter(({ location }: { location: string[] }) => location[0] === 'response')
  return ofAnswer.length === 0 ? undefined : `${call.method} ${call.url}: ${JSON.stringify(ofAnswer[0])}`
}

export async function proxied({ folder, contract, calls }: Place, service: string): Promise<string> {
  const args = ['proxy', contract, service, '--port', String(PORT)]
  const proxy = spawn(path.join(folder, 'node_modules/.bin/prism'), args, { cwd: folder, stdio: 'ignore' })
  try {
    const base = `http://127.0.0.1:${PORT}`
    await listening(base)
    const complaints: string[] = []
    let misreadings = 0
    for (const call of calls) {
      const found = await complaint(call, base)
      if (found !== undefined && misread(call)) misreadings++
      else if (found !== undefined) complaints.push(found)
    }
    if (complaints.length > 0)
      throw new Error(`${complaints.length} of ${calls.length}: ${complaints.slice(0, 3).join('; ')}`)
    return `${calls.length - misreadings} of ${calls.length} calls without a complaint, ${misreadings} of a form that it takes for application/json`
  } finally {
    proxy.kill()
  }
}
