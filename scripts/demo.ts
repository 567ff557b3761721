/** Starts the service on a free port, posts the demo scenario, prints the plan, writes its documents to demo-out/, stops. */
import { mkdirSync, writeFileSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { setTimeout as sleep } from 'node:timers/promises'
import { buildApp } from '../src/app.ts'
import { estatePlan } from '../src/http/operations/systems/plans-examples.ts'

const folder = new URL('../demo-out/', import.meta.url)

const app = await buildApp()
await app.listen({ port: 0, host: '127.0.0.1' })
const { port } = app.server.address() as AddressInfo
const base = `http://127.0.0.1:${port}`

/** A slow or busy machine answers 503 with the time to wait. */
async function patiently(call: () => Promise<Response>, tries = 12): Promise<Response> {
  const answer = await call()
  if (answer.status !== 503 || tries === 0) return answer
  await answer.arrayBuffer()
  await sleep(1000 * Number(answer.headers.get('retry-after') ?? 1))
  return patiently(call, tries - 1)
}

async function ask(path: string, request: unknown, accept: string): Promise<Uint8Array> {
  const headers = { 'content-type': 'application/json', accept }
  const body = JSON.stringify(request)
  const answer = await patiently(() => fetch(base + path, { method: 'POST', headers, body }))
  const bytes = new Uint8Array(await answer.arrayBuffer())
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${new TextDecoder().decode(bytes)}`)
  return bytes
}

function keep(name: string, bytes: Uint8Array): void {
  writeFileSync(new URL(name, folder), bytes)
  console.log(`demo-out/${name}, ${Math.ceil(bytes.length / 1024)} KiB`)
}

/** Each part of a plan shows the request its own resource answers; a part that could not be done has none to draw. */
interface PlanAnswer {
  readonly result: {
    readonly parts: Readonly<Record<string, { readonly done: boolean; readonly request?: Record<string, unknown> }>>
  }
}

async function writeDocuments(plan: PlanAnswer): Promise<void> {
  const request = (part: string) => {
    const found = plan.result.parts[part]
    if (found?.done !== true) throw new Error(`the plan has no ${part} to draw`)
    return found.request
  }
  const [box, { sheets, kerfMm } = {}] = [request('box'), request('sheets')]
  const drawings = { box, sheets, kerfMm, title: estatePlan.name }
  for (const [name, path, body, accept] of [
    ['plan.html', '/v1/plans', estatePlan, 'text/html'],
    ['plan.pdf', '/v1/plans', estatePlan, 'application/pdf'],
    ['materials.csv', '/v1/plans', estatePlan, 'text/csv'],
    ['panels.svg', '/v1/boxes/drawings', { ...drawings, show: 'panels' }, 'image/svg+xml'],
    ['panels.dxf', '/v1/boxes/drawings', { ...drawings, show: 'panels' }, 'image/vnd.dxf'],
    ['cut-sheets.pdf', '/v1/boxes/drawings', { ...drawings, show: 'cut-sheets' }, 'application/pdf'],
    ['cut-list.csv', '/v1/boxes/panels', box, 'text/csv'],
    ['curves.csv', '/v1/enclosures/response', request('response'), 'text/csv'],
    ['curves.svg', '/v1/enclosures/response', request('response'), 'image/svg+xml']
  ] as const) {
    keep(name, await ask(path, body, accept))
  }
}

try {
  const json = await ask('/v1/plans', estatePlan, 'application/json')
  const text = await ask('/v1/plans', estatePlan, 'text/plain')
  console.log(new TextDecoder().decode(text))
  mkdirSync(folder, { recursive: true })
  keep('plan.json', json)
  keep('plan.txt', text)
  await writeDocuments(JSON.parse(new TextDecoder().decode(json)))
} finally {
  await app.close()
}
