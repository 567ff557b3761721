/**
 * The cost model of the operations against measurement: `npx tsx scripts/bench/cost.ts`. Processor time of each example, least
 * of the repeats that fit into a second, over what the record says, both as multiples of one closed response at 200 points in
 * the same run. Rows beyond 0.5 to 2 are marked; the exit code says whether there are any above 2.
 */
import { computeResponse } from '../../src/http/operations/enclosures/enclosure-response.ts'
import { operations } from '../../src/http/operations.ts'
import type { Operation } from '../../src/http/wire/operation.ts'

const options = { digits: 'six', basis: false } as const
const MOST_MS = 1_000

function processorMs(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}

async function leastMs(operation: Operation, request: unknown): Promise<number> {
  const begin = processorMs()
  let least = Number.POSITIVE_INFINITY
  for (let run = 0; run < 100 && (run < 3 || processorMs() - begin < MOST_MS); run++) {
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
for (const operation of operations) {
  for (const [name, { request }] of Object.entries(operation.examples)) {
    const machine = await referenceMs()
    const measured = (await leastMs(operation, request)) / machine
    const ratio = measured / operation.costMs(request, options)
    const mark = ratio > 2 ? 'dearer than said' : ratio < 0.5 ? 'cheaper than said' : ''
    if (ratio > 2) missed++
    console.log(`${operation.operationId} ${name}`.padEnd(45), ratio.toFixed(2).padStart(6), mark)
  }
}
process.exitCode = missed > 0 ? 1 : 0
