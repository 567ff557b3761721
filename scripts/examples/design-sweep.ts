/**
 * A sweep: one driver in closed boxes of many volumes, as one batch that is answered line by line, so that a long one shows its
 * first results at once and goes on where it was cut.
 *
 *   npx tsx scripts/examples/design-sweep.ts http://localhost:3000
 */
import { pathToFileURL } from 'node:url'
import { answerIn, batchCall, type RequestOf, type Schemas } from '../../client/index.ts'

type Driver = RequestOf<'computeResponse'>['driver']

const driver: Driver = { fsHz: 28, qms: 5.2, qes: 0.46, vasL: 62, sdCm2: 490, reOhm: 3.4, xmaxMm: 14, powerW: 400 }

interface Row {
  readonly volumeL: number
  readonly f3Hz?: number
  readonly qtc?: number
}

async function* linesOf(body: ReadableStream<Uint8Array>): AsyncGenerator<string> {
  const reader = body.getReader()
  const decoder = new TextDecoder()
  let rest = ''
  for (let chunk = await reader.read(); !chunk.done; chunk = await reader.read()) {
    const lines = (rest + decoder.decode(chunk.value, { stream: true })).split('\n')
    rest = lines.pop() ?? ''
    yield* lines
  }
}

/** @returns a row a volume, in their order. @throws where the stream was cut before its summary */
export async function sweep(service: string, volumesL: readonly number[]): Promise<readonly Row[]> {
  const calls = volumesL.map(netVolumeL =>
    batchCall('computeResponse', {
      driver,
      enclosure: { kind: 'closed', rear: { netVolumeL } },
      source: { voltageV: 2.83 },
      frequenciesHz: [20, 40, 80]
    })
  )
  const response = await fetch(`${service}/v1/batches?form=ndjson`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ calls })
  })
  if (!response.ok || response.body === null) throw new Error(`the service answers ${response.status}`)
  const rows: Row[] = []
  for await (const line of linesOf(response.body)) {
    const item: Schemas['BatchItem'] | { readonly summary: Schemas['BatchSummary'] } = JSON.parse(line)
    if ('summary' in item) return rows
    if (item.outcome === 'refused') throw new Error(`${volumesL[item.index]} L: ${item.problem.detail}`)
    const scalars = answerIn(item, 'computeResponse')?.result.scalars
    const { f3Hz, qtc } = scalars ?? {}
    rows.push({
      volumeL: volumesL[item.index] ?? Number.NaN,
      ...(f3Hz === undefined ? {} : { f3Hz }),
      ...(qtc === undefined ? {} : { qtc })
    })
  }
  throw new Error(`cut after ${rows.length} lines: ask again with ?fromIndex=${rows.length}`)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const volumesL = Array.from({ length: 60 }, (_, step) => 10 + 2 * step)
  console.table(await sweep(process.argv[2] ?? 'http://localhost:3000', volumesL))
}
