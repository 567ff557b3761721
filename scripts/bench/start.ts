/**
 * Time and memory until the service is ready, beside a bare server of the same framework in the same run. Build first:
 * `npm run build`, then `npx tsx scripts/bench/start.ts [RUNS]`. Processor time is of all threads, to the first answered
 * health call and 0.8 s on; the last row is read again when a worker has made two plans. Linux only: it reads /proc.
 */
import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { estatePlan } from '../../src/http/operations/systems/plans-examples.ts'

const MS_A_TICK = 10
const bare = `import Fastify from 'fastify'
const app = Fastify()
app.get('/health/ready', async () => ({ status: 'ready' }))
await app.listen({ port: Number(process.env.PORT), host: '127.0.0.1' })`

const main = fileURLToPath(new URL('../../dist/main.js', import.meta.url))

function processorMs(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? []
  return (Number(fields[11]) + Number(fields[12])) * MS_A_TICK
}

function residentMb(pid: number): number {
  return Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024
}

async function untilReady(url: string): Promise<void> {
  for (;;) {
    const ready = await fetch(url).then(
      ({ ok }) => ok,
      () => false
    )
    if (ready) return
    await pause(10)
  }
}

interface Reading {
  readonly wallMs: number
  readonly processorMs: number
  readonly readyMb: number
  readonly warmMb?: number
}

async function started(
  args: readonly string[],
  port: number,
  whenWarm?: (url: string) => Promise<void>
): Promise<Reading> {
  const env = { PATH: process.env.PATH, PORT: String(port), HOST: '127.0.0.1', LOG_LEVEL: 'silent' }
  const begin = performance.now()
  const child: ChildProcess = spawn(process.execPath, args, { env, stdio: 'inherit' })
  const pid = child.pid ?? 0
  const url = `http://127.0.0.1:${port}`
  try {
    await untilReady(`${url}/health/ready`)
    const wallMs = performance.now() - begin
    await pause(800)
    const reading = { wallMs, processorMs: processorMs(pid), readyMb: residentMb(pid) }
    await whenWarm?.(url)
    return whenWarm === undefined ? reading : { ...reading, warmMb: residentMb(pid) }
  } finally {
    child.kill('SIGKILL')
  }
}

/** Behind the warming up, which begins two seconds after listening. */
async function warm(url: string): Promise<void> {
  const body = JSON.stringify(estatePlan)
  const ask = () => fetch(`${url}/v1/plans`, { method: 'POST', headers: { 'content-type': 'application/json' }, body })
  await pause(2_000)
  while (!(await ask()).ok) await pause(1_000)
  const begin = performance.now()
  await ask()
  console.log(`a plan, warm: ${Math.round(performance.now() - begin)} ms wall`)
}

const runs = Number(process.argv[2] ?? 3)
const readings: { readonly bare: Reading; readonly ours: Reading }[] = []
for (let run = 0; run < runs; run++) {
  readings.push({
    bare: await started(['--input-type=module', '-e', bare], 3971),
    ours: await started([main], 3972, run === runs - 1 ? warm : undefined)
  })
}

const least = (read: (reading: (typeof readings)[number]) => number) => Math.round(Math.min(...readings.map(read)))
const bareMs = least(({ bare: { processorMs } }) => processorMs)
const oursMs = least(({ ours: { processorMs } }) => processorMs)
console.table({
  bare: {
    'processor ms': bareMs,
    'wall ms': least(({ bare: { wallMs } }) => wallMs),
    'MB ready': least(({ bare: { readyMb } }) => readyMb)
  },
  ours: {
    'processor ms': oursMs,
    'wall ms': least(({ ours: { wallMs } }) => wallMs),
    'MB ready': least(({ ours: { readyMb } }) => readyMb)
  }
})
console.log(
  `ready at ${(oursMs / bareMs).toFixed(1)} × bare (goal 3), warm ${Math.round(readings.at(-1)?.ours.warmMb ?? 0)} MB (goal 200)`
)
