/**
 * The cost model of the operations against measurement: `npx tsx scripts/bench/cost.ts [operationId …]`. Processor time of each
 * example, least of the repeats that fit into a second and of six at least, since the first ones run unoptimised; over what the record says, both as multiples of one closed response at 200 points in
 * the same run. Rows beyond 0.5 to 2 are marked; the exit code says whether there are any above 2.
 */
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { operations } from '../../src/http/operations.ts'
import type { Operation } from '../../src/http/wire/operation.ts'

const options = { digits: 'six', basis: false } as const
const MOST_MS = 1_000
const LEAST_RUNS = 6

function processorMs(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

async function leastMs(operation: Operation, request: unknown): Promise<number> {
  const begin = processorMs()
  let least = Number.POSITIVE_INFINITY
  for (let run = 0; run < 100 && (run < LEAST_RUNS || processorMs() - begin < MOST_MS); run++) {
    const before = processorMs()
    await operation.run(request, options)
    least = Math.min(least, processorMs() - before)
  }
  return least
}

const reference = computeResponse.examples.closed?.request
const referenceMs = async () => (await leastMs(computeResponse, reference)) / computeResponse.costMs(reference, options)

await referenceMs()
let missed = 0
const asked = process.argv.slice(2)
for (const operation of operations.filter(({ operationId }) => asked.length === 0 || asked.includes(operationId))) {
  for (const [name, { request }] of Object.entries(operation.examples)) {
    const before = await referenceMs()
    const taken = await leastMs(operation, request)
    const measured = taken / Math.min(before, await referenceMs())
    const ratio = measured / operation.costMs(request, options)
    const mark = ratio > 2 ? 'dearer than said' : ratio < 0.5 ? 'cheaper than said' : ''
    if (ratio > 2) missed++
    console.log(`${operation.operationId} ${name}`.padEnd(45), ratio.toFixed(2).padStart(6), mark)
  }
}
process.exitCode = missed > 0 ? 1 : 0
