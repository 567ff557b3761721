/**
 * Where a small request's time goes inside the process, hot: `npx tsx scripts/bench/stages.ts`. Least µs of each stage, the
 * candidates taking turns; "around" is what is left of the whole for envelope and writer.
 */
import type { JsonSchema } from '../../src/contract/field/component.ts'
import { chooseCable } from '../../src/domain/circuit/choice/choose-cable.ts'
import { supplyCurrent } from '../../src/domain/circuit/load/supply-current.ts'
import { wireCoils } from '../../src/domain/coils/wire-coils.ts'
import { operations } from '../../src/http/operations.ts'
import { acceptedType } from '../../src/http/serving/representation/negotiate.ts'
import type { Operation } from '../../src/http/wire/operation.ts'
import { readJson } from '../../src/http/wire/request/json-reader.ts'
import { requestValidator } from '../../src/http/wire/request/request-validator.ts'
import { toSi } from '../../src/http/wire/request/to-si.ts'
import { timings } from './timing.ts'

// biome-ignore lint/suspicious/noExplicitAny: each takes the request of its own operation
const domain: Readonly<Record<string, (request: any) => unknown>> = {
  computeCurrent: supplyCurrent,
  chooseCable,
  wireCoils
}
const options = { digits: 'six', basis: false } as const
const ajv = requestValidator()

function stages(operation: Operation, compute: (request: unknown) => unknown) {
  const request = Object.values(operation.examples)[0]?.request
  const text = JSON.stringify(request)
  const si = toSi(request)
  const valid = ajv.compile(operation.body as JsonSchema)
  const rows = timings([
    { name: 'reader', run: () => readJson(text) },
    { name: 'validator', run: () => valid(request) },
    { name: 'SI', run: () => toSi(request) },
    { name: 'domain', run: () => compute(si) },
    { name: 'form', run: () => acceptedType('*/*', ['application/json', 'image/svg+xml']) },
    { name: 'whole', run: () => operation.answerText(request, options) }
  ])
  const us = Object.fromEntries(rows.map(({ name, minimum }) => [name, minimum]))
  const { whole = 0, domain: own = 0, SI = 0 } = us
  return { ...us, around: whole - own - SI }
}

const table = operations.flatMap(operation => {
  const compute = domain[operation.operationId]
  return compute === undefined ? [] : [[operation.operationId, stages(operation, compute)] as const]
})
const round = (row: Readonly<Record<string, number>>) =>
  Object.fromEntries(Object.entries(row).map(([name, us]) => [name, Math.round(us * 10) / 10]))
console.table(Object.fromEntries(table.map(([name, row]) => [name, round(row)])))
