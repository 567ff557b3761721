/** Starts the service on a free port, posts the demo scenario, prints the plan, writes its documents to demo-out/, stops. */
import { mkdirSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { setTimeout as sleep } from 'node:timers/promises'
import { buildApp } from '../src/app.ts'
import { estatePlan } from '../src/http/examples/plans.ts'

const folder = new URL('../demo-out/', import.meta.url)

const app = await buildApp()
await app.listen({ port: 0, host: '127.0.0.1' })
const { port } = app.server.address() as AddressInfo
const base = `http://127.0.0.1:${port}`

/** A slow or busy machine answers 503 with the time to wait. */
async function patiently(call: () => Promise<Response>, tries = 8): Promise<Response> {
  const answer = await call()
  if (answer.status !== 503 || tries === 0) return answer
  await sleep(1000 * Number(answer.headers.get('retry-after') ?? 1))
  return patiently(call, tries - 1)
}

async function planAs(accept: string): Promise<Uint8Array> {
  const headers = { 'content-type': 'application/json', accept }
  const body = JSON.stringify(estatePlan)
  const answer = await patiently(() => fetch(`${base}/v1/plans`, { method: 'POST', headers, body }))
  const bytes = new Uint8Array(await answer.arrayBuffer())
  if (!answer.ok) throw new Error(`${answer.status}: ${new TextDecoder().decode(bytes)}`)
  return bytes
}

try {
  console.log(new TextDecoder().decode(await planAs('text/plain')))
  mkdirSync(folder, { recursive: true })
  const written = { 'plan.json': 'application/json', 'plan.txt': 'text/plain' }
  for (const [name, accept] of Object.entries(written)) writeFileSync(new URL(name, folder), await planAs(accept))
  console.log(`Written to demo-out/: ${Object.keys(written).join(', ')}`)
} finally {
  await app.close()
}
