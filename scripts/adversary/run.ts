/**
 * npm run adversary -- [--seed N] [--calls M] [--only operationId,…] [--keep] [--tally FILE]
 * Looks for requests that cost much, break the service, its contract or what always holds. `--keep` writes each find, made
 * small, to `test/regressions`; `--tally` adds a line of figures, so that many seeds make one long run. A climb follows measured time, so a seed repeats its beginning, not all of it.
 */
import { appendFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { buildApp } from '../../src/app.ts'
import { operations } from '../../src/http/operations.ts'
import { seeded } from '../../test/support/random-requests.ts'
import { inThisProcess } from '../../test/support/work-here.ts'
import { keepCase } from './cases.ts'
import { hunt } from './hunt.ts'
import { smallest } from './smallest.ts'

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    calls: { type: 'string', default: '5000' },
    only: { type: 'string' },
    keep: { type: 'boolean', default: false },
    tally: { type: 'string' }
  }
})
const chosen = operations.filter(({ operationId }) => values.only?.split(',').includes(operationId) ?? true)
const app = await buildApp({ rateLimitMax: 0, eventLoopDelayMaxMs: 0, work: inThisProcess })
let made = 0
app.addHook('onRequest', async () => {
  made++
})
await app.ready()

const report = await hunt(app, chosen, {
  random: seeded(Number(values.seed)),
  calls: Number(values.calls),
  made: () => made,
  onFind: found => console.error(JSON.stringify(found).slice(0, 4000))
})
for (const row of report.rows) {
  const { operationId, calls, answered, laws, dearest } = row
  const dear = dearest && `dearest ${dearest.cpuMs.toFixed(0)} ms for ${dearest.bytes} bytes`
  console.log(`${operationId.padEnd(26)} ${calls} calls  ${answered} answered  ${laws} laws tried  ${dear ?? ''}`)
}
for (const { finding, times } of report.finds) {
  const small = await smallest(app, finding)
  const { operationId, kind, law, request, varied, detail } = small
  console.log(`\n${operationId} ${kind} ${law ?? ''} ×${times}: ${detail.slice(0, 600)}`)
  console.log(`  ${JSON.stringify(request).slice(0, 3000)}`)
  if (varied !== undefined) console.log(`  then ${JSON.stringify(varied).slice(0, 3000)}`)
  if (values.keep) console.log(`  ${keepCase({ ...small, found: `seed ${values.seed}, ${values.calls} calls` })}`)
}
if (values.tally !== undefined) {
  const answered = report.rows.reduce((sum, row) => sum + row.answered, 0)
  const cpuS = Math.round(process.cpuUsage().user / 1e6)
  const line = { seed: Number(values.seed), calls: made, answered, faults: report.finds.length, cpuS }
  appendFileSync(values.tally, `${JSON.stringify(line)}\n`)
}
console.log(`\n${made} calls, ${report.finds.length} kinds of fault`)
await app.close()
process.exitCode = report.finds.length === 0 ? 0 : 1
