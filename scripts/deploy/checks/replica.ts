/** A replica of the service as it is shipped: `node dist/main.js` in a process of its own, on loopback. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, readFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'

const main = fileURLToPath(new URL('../../../dist/main.js', import.meta.url))
const READY_MS = 120_000

export interface Replica {
  readonly port: number
  readonly pid: number
  /** Memory that is its own and in use [MiB]. */
  readonly residentMb: () => number
  /** Processor time since its start [s]. */
  readonly cpuS: () => number
  /** @returns its exit code, or the signal that ended it */
  readonly end: (signal: NodeJS.Signals) => Promise<number | string>
}

const given = new Set<number>()
/** Below the range from which outgoing connections take their ports. */
export async function freePort(): Promise<number> {
  for (;;) {
    const port = 20_000 + Math.floor(Math.random() * 12_000)
    const server = createServer()
    const free = await new Promise<boolean>(done => {
      server.once('error', () => done(false)).listen(port, '127.0.0.1', () => server.close(() => done(true)))
    })
    if (free && !given.has(port)) {
      given.add(port)
      return port
    }
  }
}

async function isReady(port: number): Promise<boolean> {
  return fetch(`http://127.0.0.1:${port}/health/ready`).then(
    ({ ok }) => ok,
    () => false
  )
}

const running = new Set<ChildProcess>()
process.on('exit', () => {
  for (const child of running) child.kill('SIGKILL')
})

interface Start {
  readonly port?: number
  /** Folder of a control group that the process joins before it is the service. */
  readonly group?: string
}

/** @param settings  environment of the service; nothing else of ours reaches it */
export async function startReplica(
  settings: Readonly<Record<string, string>> = {},
  { port, group }: Start = {}
): Promise<Replica> {
  if (!existsSync(main)) throw new TypeError('no dist: run `npm run build` first')
  const at = port ?? (await freePort())
  const env = { PATH: process.env.PATH, HOST: '127.0.0.1', LOG_LEVEL: 'error', ...settings, PORT: String(at) }
  const join = group === undefined ? '' : `echo $$ > ${group}/cgroup.procs; `
  const command = `${join}exec "$0" "$1"`
  const child = spawn('/bin/sh', ['-c', command, process.execPath, main], {
    env,
    stdio: ['ignore', 'inherit', 'inherit']
  })
  running.add(child)
  const gone = once(child, 'exit').then(([code, signal]) => {
    running.delete(child)
    return (code ?? signal) as number | string
  })
  const pid = child.pid ?? 0
  for (const end = performance.now() + READY_MS; !(await isReady(at)); await pause(100)) {
    if (child.exitCode !== null || performance.now() > end) throw new TypeError('the service did not get ready')
  }
  const field = (file: string) => readFileSync(`/proc/${pid}/${file}`, 'utf8')
  return {
    port: at,
    pid,
    residentMb: () => Number(/VmRSS:\s+(\d+)/.exec(field('status'))?.[1]) / 1024,
    cpuS: () => {
      const [, ...rest] = field('stat').split(') ')
      const fields = rest.join(') ').split(' ')
      return (Number(fields[11]) + Number(fields[12])) / 100
    },
    end: async signal => {
      child.kill(signal)
      return gone
    }
  }
}
