/**
 * The figures of speed and weight that are of one answer: `npx tsx scripts/bench/answers.ts [ROUNDS]`. Processor time of this
 * process, warm, the least of the rounds; bytes as a phone would receive them.
 */
import { gzipSync } from 'node:zlib'
import { operations } from '../../src/http/operations.ts'
import type { AnswerOptions, Operation } from '../../src/http/wire/operation.ts'

const rounds = Number(process.argv[2] ?? 7)
const options = { digits: 'six', basis: false } as const

function operationOf(id: string): Operation {
  const found = operations.find(({ operationId }) => operationId === id)
  if (found === undefined) throw new TypeError(`no operation ${id}`)
  return found
}

async function leastMs(run: () => unknown): Promise<number> {
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds; round++) {
    const before = process.cpuUsage()
    await run()
    const { user, system } = process.cpuUsage(before)
    least = Math.min(least, (user + system) / 1000)
  }
  return Math.round(least * 100) / 100
}

const vented = {
  driver: { fsHz: 30, qms: 5, qes: 0.45, vasL: 60, sdCm2: 480, reOhm: 3.4 },
  enclosure: { kind: 'vented', rear: { netVolumeL: 60, port: { areaCm2: 80, lengthMm: 250 } } },
  source: { voltageV: 30 },
  frequenciesHz: { fromHz: 10, toHz: 300, points: 200 }
}
const response = operationOf('computeResponse')
const plan = operationOf('planSystem')
const estate = plan.examples.estate?.request
const asPlan = (more: Partial<AnswerOptions>) => plan.run(estate, { ...options, ...more })
const parts = (names: readonly string[]) => asPlan({ parts: names })

for (let time = 0; time < 2_000; time++) response.answerText(vented, options)
for (let time = 0; time < 3; time++) await asPlan({})
const kB = (body: string | Uint8Array) => Math.round(gzipSync(body).length / 100) / 10
console.table({
  'response, 200 points': { ms: await leastMs(() => response.answerText(vented, options)) },
  plan: { ms: await leastMs(() => asPlan({})), 'gzip kB': kB((await asPlan({})).body) },
  'plan, ?parts=summary': { 'gzip kB': kB((await parts(['summary'])).body) },
  'plan, compact': { 'gzip kB': kB((await asPlan({ form: 'application/vnd.cabinbass.compact+json' })).body) },
  'plan and its PDF': { ms: await leastMs(() => asPlan({ form: 'application/pdf' })) },
  'plan and its page': { ms: await leastMs(() => asPlan({ form: 'text/html' })) }
})
