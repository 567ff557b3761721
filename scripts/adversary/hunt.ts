/** A seeded hunt over operations: each has its own climb, cheap ones are asked more often. */
import type { FastifyInstance } from 'fastify'
import { defaultSettings } from '../../src/http/serving/settings.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { pick, type Random } from '../../test/support/random-requests.ts'
import { type Climb, climb } from './climb.ts'
import { asked, type Finding, lawFindings, replyFindings } from './judge.ts'
import { watch } from './watch.ts'

/** Processor time one call may take [ms]: in the thread that answers everybody, and in a worker half of what it is granted. */
const mostMs = ({ heavy = false }: Operation): number => (heavy ? defaultSettings().workTimeoutMs / 2 : 250)
/** Far beyond all of it, with its laws and repetitions. */
const HANGS_MS = 120_000

interface Row {
  readonly operationId: string
  calls: number
  answered: number
  laws: number
  dearest?: ReturnType<Climb['dearest']>
}

export interface Hunted {
  readonly rows: readonly Row[]
  /** One find of each kind, with how often it came. */
  readonly finds: readonly { readonly finding: Finding; readonly times: number }[]
}

/** Finds that differ in figures only are one. */
const likeness = ({ operationId, kind, law, detail }: Finding) =>
  [operationId, kind, law, law === undefined ? detail.replace(/[-\d.e]+/g, '#').slice(0, 160) : ''].join(' ')

/** A call with its judges beside what the operation itself costs, and the least that one for a worker costs [ms]. */
const CALL_MS = 2
const HEAVY_MS = 10

/** Cheap ones far oftener, and yet the dear ones have a share of the time: a million calls take about an hour of one core. */
function shares(operations: readonly Operation[]): readonly Operation[] {
  return operations.flatMap(operation => {
    const costs = Object.values(operation.examples).map(({ request }) =>
      operation.costMs(request, { digits: 'six', basis: false })
    )
    const dearestMs = Math.max(operation.heavy === true ? HEAVY_MS : 0, ...costs.filter(Number.isFinite))
    return Array.from({ length: Math.ceil(2000 / (CALL_MS + dearestMs) ** 1.3) }, () => operation)
  })
}

/** Measured again before it is called slow: a collection of garbage is nobody's fault. */
export async function isSlow(app: FastifyInstance, operation: Operation, request: unknown): Promise<boolean> {
  for (let again = 0; again < 3; again++) {
    if ((await asked(app, operation, request)).cpuMs <= mostMs(operation)) return false
  }
  return true
}

interface Hunting {
  readonly random: Random
  readonly calls: number
  /** How many the service has had so far, laws and repetitions included. */
  readonly made: () => number
  /** Hears of each new kind of find at once: a hunt takes long. */
  readonly onFind: (finding: Finding) => void
}

export async function hunt(
  app: FastifyInstance,
  operations: readonly Operation[],
  { random, calls, made, onFind }: Hunting
): Promise<Hunted> {
  const places = new Map(
    operations.map(operation => [
      operation.operationId,
      {
        path: climb(operation, random),
        row: { operationId: operation.operationId, calls: 0, answered: 0, laws: 0 } as Row
      }
    ])
  )
  const finds = new Map<string, { finding: Finding; times: number }>()
  const note = (finding: Finding) => {
    const known = finds.get(likeness(finding))
    if (known === undefined) onFind(finding)
    finds.set(likeness(finding), { finding: known?.finding ?? finding, times: (known?.times ?? 0) + 1 })
  }
  const guard = watch(HANGS_MS)
  const draw = shares(operations)
  while (made() < calls) {
    const operation = pick(random, draw)
    const place = places.get(operation.operationId)
    if (place === undefined) continue
    const { path, row } = place
    const request = path.next()
    guard.begin(operation.operationId, request)
    const reply = await asked(app, operation, request)
    for (const finding of replyFindings(operation, request, reply)) note(finding)
    row.calls++
    if (typeof request !== 'string') path.learn(request, reply.cpuMs)
    if (reply.cpuMs > mostMs(operation) && (await isSlow(app, operation, request))) {
      note({ operationId: operation.operationId, kind: 'slow', request, detail: `${Math.round(reply.cpuMs)} ms` })
    }
    if (reply.status === 200 && typeof request !== 'string') {
      row.answered++
      for (const finding of await lawFindings(app, operation, { request, reply }, random)) note(finding)
      row.laws += operation.laws.length + 1
    }
    guard.end()
  }
  const rows = [...places.values()].map(({ row, path }) => ({ ...row, dearest: path.dearest() }))
  return { rows, finds: [...finds.values()] }
}
