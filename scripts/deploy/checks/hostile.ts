/**
 * npx tsx scripts/deploy/checks/hostile.ts: clients that mean harm, one series after another, with an ordinary call every
 * quarter of a second. Bounded in count and time.
 */
import { connect, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { asksFor } from './asks.ts'
import type { Ask } from './load.ts'
import { startReplica } from './replica.ts'
import { finish, must, note } from './verdict.ts'

/** An ordinary call has its answer by then, be it that the service is too busy. */
const ANSWER_MS = 15_000

const replica = await startReplica({ RATE_LIMIT_MAX: '0', WORKERS: '1' })
const [ordinary] = asksFor('chooseCable') as readonly [Ask]
const head = (more: string) => `POST ${ordinary.path} HTTP/1.1\r\nhost: a\r\ncontent-type: application/json\r\n${more}`
const whole = `${head(`content-length: ${Buffer.byteLength(ordinary.body)}\r\n`)}\r\n${ordinary.body}`

function open(begin: (socket: Socket) => void): Socket {
  const socket = connect(replica.port, '127.0.0.1', () => begin(socket))
  // A connection that the service ends is what is wanted here.
  socket.on('error', () => {}).on('data', () => {})
  return socket
}

interface Ordinary {
  readonly status: number
  readonly ms: number
}

/** Status 0 where no answer came. */
async function ordinaryCall(): Promise<Ordinary> {
  const from = performance.now()
  const status = await fetch(`http://127.0.0.1:${replica.port}${ordinary.path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: ordinary.body,
    signal: AbortSignal.timeout(ANSWER_MS)
  }).then(
    async reply => {
      await reply.arrayBuffer()
      return reply.status
    },
    () => 0
  )
  return { status, ms: performance.now() - from }
}

/** Whether ordinary calls are answered again soon after. */
async function recovers(): Promise<boolean> {
  for (const end = performance.now() + ANSWER_MS; performance.now() < end; await pause(250)) {
    if ((await ordinaryCall()).status === 200) return true
  }
  return false
}

interface Series {
  readonly name: string
  readonly connections: number
  readonly seconds: number
  readonly begin: (socket: Socket) => void
  /** What each open connection does every quarter of a second. */
  readonly goOn?: (socket: Socket) => void
}

const broken = [
  'GET / HTTP/9.9\r\n\r\n',
  'PRI * HTTP/2.0\r\n\r\n',
  '\u0016\u0003\u0001\u0000',
  head('content-length: -1\r\n\r\n'),
  head('content-length: 4\r\ntransfer-encoding: chunked\r\n\r\n0\r\n\r\n'),
  head('transfer-encoding: chunked\r\n\r\nzz\r\n'),
  `GET /${'a'.repeat(70_000)} HTTP/1.1\r\n\r\n`,
  head(`x: ${'a'.repeat(120_000)}\r\n\r\n`)
]

const series: readonly Series[] = [
  {
    name: 'heads that never end',
    connections: 300,
    seconds: 15,
    begin: socket => socket.write(head('')),
    goOn: socket => socket.write('x: 1\r\n')
  },
  {
    name: 'bodies that never end',
    connections: 300,
    seconds: 15,
    begin: socket => socket.write(head('content-length: 5000\r\n\r\n{')),
    goOn: socket => socket.write(' ')
  },
  { name: 'silent connections', connections: 1_000, seconds: 5, begin: () => {} },
  {
    name: 'answers nobody reads',
    connections: 50,
    seconds: 5,
    begin: socket => socket.pause().write('GET /openapi.json HTTP/1.1\r\nhost: a\r\n\r\n'.repeat(20))
  },
  {
    name: 'malformed HTTP',
    connections: 160,
    seconds: 3,
    begin: socket => socket.write(broken[Math.floor(Math.random() * broken.length)] ?? '')
  },
  {
    name: 'requests cut off',
    connections: 800,
    seconds: 3,
    begin: socket => socket.write(whole, () => socket.resetAndDestroy())
  },
  {
    name: 'bodies of 30 MB',
    connections: 8,
    seconds: 5,
    begin: socket =>
      socket.write(Buffer.concat([Buffer.from(head('content-length: 30000000\r\n\r\n')), Buffer.alloc(30_000_000, 97)]))
  },
  {
    name: 'three hundred calls in one breath',
    connections: 4,
    seconds: 5,
    begin: socket => socket.write(whole.repeat(300))
  }
]

async function run({ name, connections, seconds, begin, goOn }: Series): Promise<void> {
  const sockets = Array.from({ length: connections }, () => open(begin))
  const calls: Ordinary[] = []
  for (const end = performance.now() + seconds * 1_000; performance.now() < end; await pause(250)) {
    for (const socket of sockets) if (!socket.destroyed && socket.writable) goOn?.(socket)
    calls.push(await ordinaryCall())
  }
  const left = sockets.filter(({ destroyed }) => !destroyed).length
  for (const socket of sockets) socket.destroy()
  const of = (wanted: number) => calls.filter(({ status }) => status === wanted).length
  const slowest = Math.max(...calls.map(({ ms }) => ms))
  const answers = `${of(200)} ordinary calls answered, ${of(503)} told to come back, the slowest after ${slowest.toFixed(0)} ms`
  must(of(200) + of(503) === calls.length, `${name}: ${answers}; ${left} of ${connections} connections left`)
  must(await recovers(), `${name}: answers again`)
}

await ordinaryCall()
const before = replica.residentMb()
for (const each of series) await run(each)
await pause(1_000)
const after = replica.residentMb()
note(`memory ${before.toFixed(0)} MiB, then ${after.toFixed(0)} MiB`)
must(after < before + 250, 'memory stays within bounds')
must((await replica.end('SIGTERM')) === 0, 'stops with 0')
finish()
