/**
 * A search over a large shelf through a service of its own, and what small calls wait meanwhile:
 * `npx tsx scripts/bench/search-beside.ts [drivers] [amplifiers]`.
 */
import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { largeShelf } from '../../test/support/large-shelf.ts'
import { coils } from '../../test/support/service.ts'

const [drivers = 200, amplifiers = 100] = process.argv.slice(2).map(Number)
const PORT = 3917
const url = `http://127.0.0.1:${PORT}`
const main = fileURLToPath(new URL('../../src/main.ts', import.meta.url))
const child = spawn(process.execPath, ['--import', 'tsx', main], {
  env: { ...process.env, PORT: String(PORT), RATE_LIMIT_MAX: '0', WORK_TIMEOUT_MS: '60000', LOG_LEVEL: 'error' },
  stdio: ['ignore', 'ignore', 'inherit']
})
const post = (path: string, body: unknown, accept = 'application/json') =>
  fetch(`${url}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', accept },
    body: JSON.stringify(body)
  })
const pause = (ms: number) => new Promise(resolve => setTimeout(resolve, ms))

/** Twenty small calls a second until told to stop. @returns milliseconds of each, sorted */
async function small(isOver: () => boolean): Promise<readonly number[]> {
  const taken: number[] = []
  while (!isOver()) {
    const before = performance.now()
    await (await post(coils.url, coils.body)).text()
    taken.push(performance.now() - before)
    await pause(50)
  }
  return taken.toSorted((a, b) => a - b)
}

const told = (name: string, sorted: readonly number[]) => {
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(1)
  process.stdout.write(`${name}: ${sorted.length} small calls, median ${at(0.5)} ms, 99 % within ${at(0.99)} ms\n`)
}

try {
  for (let tries = 0; tries < 300; tries++) {
    if ((await fetch(`${url}/health/ready`).catch(() => undefined))?.ok) break
    await pause(200)
  }
  await pause(5_000)
  const end = performance.now() + 15_000
  told('idle', await small(() => performance.now() > end))
  const begun = performance.now()
  let isOver = false
  const search = post('/v1/designs/search', largeShelf(drivers, amplifiers), 'application/x-ndjson')
    .then(reply => reply.text())
    .finally(() => {
      isOver = true
    })
  const beside = await small(() => isOver)
  const lines = (await search).trimEnd().split('\n')
  const { result } = JSON.parse(lines.at(-1) ?? '').answer
  told('beside a search', beside)
  process.stdout.write(
    `${result.weighed} systems in ${((performance.now() - begun) / 1000).toFixed(1)} s, ${lines.length - 1} parts, ${result.designs.length} designs, ${result.unbeatenCount} unbeaten\n`
  )
} finally {
  child.kill('SIGTERM')
}
