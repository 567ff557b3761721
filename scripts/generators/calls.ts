/** Real calls of every kind, with what the service answered: results, other forms, refusals, catalogues. */
import { operations } from '../../src/http/operations.ts'
import { formNames } from '../../src/http/serving/representation/forms.ts'

export interface Asked {
  readonly operationId: string
  readonly method: 'GET' | 'POST'
  readonly url: string
  readonly body?: unknown
}

export interface Call extends Asked {
  readonly status: number
  readonly type: string
  readonly answer: unknown
}

const MOST = 64

const catalogues: readonly Asked[] = ['problems', 'cautions', 'changes', 'problems/overloaded', 'problems/none'].map(
  name => ({ operationId: '', method: 'GET', url: `/v1/${name}` })
)

/** Examples, their forms, a misspelt field, a query, a catalogue: as they come round, until there are enough. */
export function askedCalls(): readonly Asked[] {
  const kinds: readonly (readonly Asked[])[] = [
    operations.flatMap(({ operationId, path, examples }) =>
      Object.values(examples).map(({ request }) => ({ operationId, method: 'POST' as const, url: path, body: request }))
    ),
    operations.map(({ operationId, path }) => ({
      operationId,
      method: 'POST' as const,
      url: path,
      body: { misspelt: 1 }
    })),
    operations.flatMap(({ operationId, path, forms, examples }) =>
      forms.map(({ mediaType }) => ({
        operationId,
        method: 'POST' as const,
        url: `${path}?form=${formNames[mediaType]}`,
        body: Object.values(examples)[0]?.request
      }))
    ),
    catalogues,
    [
      { operationId: '', method: 'GET', url: '/v1/coils/wiring?driverCount=2&coilsPerDriver=1&coilOhm=4' },
      { operationId: '', method: 'GET', url: '/v1/coils/wiring?driverCount=2&coilsPerDriver=1' },
      { operationId: '', method: 'GET', url: '/v1/coils/wiring?driverCount=two' }
    ]
  ]
  const longest = Math.max(...kinds.map(({ length }) => length))
  const inTurn = Array.from({ length: longest }, (_, at) => kinds.flatMap(kind => kind[at] ?? [])).flat()
  return inTurn.slice(0, MOST)
}

export async function send({ method, url, body }: Asked, base: string): Promise<Response> {
  const init = body === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
  return fetch(base + url, { method, ...init })
}

/** Lines of JSON are no JSON. */
const isJson = (type: string) => type === 'application/json' || type.endsWith('+json')

export async function answered(asked: Asked, base: string): Promise<Call> {
  const response = await send(asked, base)
  const type = (response.headers.get('content-type') ?? '').split(';')[0] ?? ''
  const text = await response.text()
  return { ...asked, status: response.status, type, answer: isJson(type) ? JSON.parse(text) : undefined }
}
