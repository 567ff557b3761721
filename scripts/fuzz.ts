/**
 * NODE_OPTIONS=--expose-gc npx tsx scripts/fuzz.ts [requests an operation] [seed] [operationId,…]
 * prints requests, statuses, the worst latency and the memory in use after each operation.
 */
import { buildApp } from '../src/app.ts'
import { operations } from '../src/http/operations.ts'
import { type FuzzReport, fuzz } from '../test/support/fuzz.ts'

const [count = '2000', seed = '1', only] = process.argv.slice(2)
const chosen = operations.filter(({ operationId }) => only === undefined || only.split(',').includes(operationId))
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0 })
await app.ready()

/** Heap in use, without what is only waiting to be collected where the collector may be called. */
function megabytes(): number {
  globalThis.gc?.()
  return Math.round(process.memoryUsage().heapUsed / 2 ** 20)
}
const statusText = ({ statuses }: FuzzReport) =>
  Object.entries(statuses)
    .map(([status, times]) => `${status}×${times}`)
    .join(' ')

let faults = 0
const before = megabytes()
for (const operation of chosen) {
  const share = operation.heavy === true ? 0.25 : 1
  const report = await fuzz(app, operation, Math.ceil(Number(count) * share), Number(seed))
  faults += report.faults.length
  console.log(
    `${operation.operationId.padEnd(26)} ${String(report.requests).padStart(6)} requests  ${statusText(report).padEnd(32)}  slowest ${report.slowestMs.toFixed(0)} ms  ${megabytes()} MB`
  )
  for (const fault of [...new Map(report.faults.map(text => [text.split(' ← ')[0], text])).values()].slice(0, 6)) {
    console.log(`    ${fault.slice(0, 1500)}`)
  }
  if (report.slowestMs > 2000) console.log(`    slowest body: ${report.slowest.slice(0, 1500)}`)
}
console.log(`${faults} faults; heap ${before} → ${megabytes()} MB`)
await app.close()
process.exitCode = faults === 0 ? 0 : 1
