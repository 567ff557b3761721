/** Responses, parameters and headers that many operations have stand once, under a name, and are referred to. */
import { present } from '../../domain/present.ts'
import { isObject, type Json, type JsonObject } from './json-tree.ts'

const nameByStatus: Readonly<Record<string, string>> = {
  '204': 'NothingToRefuse',
  '304': 'NotModified',
  '400': 'InvalidRequest',
  '401': 'Unauthorised',
  '404': 'NotFound',
  '406': 'NotAcceptable',
  '413': 'BodyTooLarge',
  '415': 'UnsupportedMediaType',
  '422': 'NoSuchDesign',
  '429': 'TooManyRequests',
  '500': 'InternalError',
  '503': 'Unavailable'
}

const text = (description: string): JsonObject => ({ description, schema: { type: 'string' } })
const seconds = (description: string): JsonObject => ({ description, schema: { type: 'integer', minimum: 0 } })

const headers = {
  'Cache-Control': text('How long a cache may keep the answer.'),
  ETag: text('Strong tag of the answer; send it back in If-None-Match.'),
  RateLimit: text('What is left of the window: `r` calls, `t` seconds (IETF draft on RateLimit fields).'),
  'RateLimit-Policy': text('How many calls a window takes: `q` calls in `w` seconds.'),
  'Retry-After': seconds('Seconds after which to ask again.'),
  'WWW-Authenticate': text('How a caller says who it is.'),
  'X-Request-Id': text('Id of the request, the caller’s own where it sent one; the log has it.')
} as const satisfies JsonObject
type HeaderName = keyof typeof headers

const always: readonly HeaderName[] = ['X-Request-Id', 'RateLimit', 'RateLimit-Policy']
const more: Readonly<Record<string, readonly HeaderName[]>> = {
  '304': ['ETag', 'Cache-Control'],
  '401': ['WWW-Authenticate'],
  '429': ['Retry-After'],
  '503': ['Retry-After']
}

function withHeaders(status: string, response: JsonObject, cacheable: boolean): JsonObject {
  const tagged: readonly HeaderName[] = cacheable && status === '200' ? ['ETag', 'Cache-Control'] : []
  const names = [...always, ...(more[status] ?? []), ...tagged]
  const named = names.map((name): [string, Json] => [name, { $ref: `#/components/headers/${name}` }])
  const { description = '', content } = response
  return { description, headers: Object.fromEntries(named), ...present({ content }) }
}

/** Parts that stand in several places, by the name they get; of two that want one name the more used has it. */
function shared(parts: readonly (readonly [name: string, part: JsonObject])[]): ReadonlyMap<string, string> {
  const uses = new Map<string, { readonly name: string; readonly text: string; count: number }>()
  for (const [name, part] of parts) {
    const text = JSON.stringify(part)
    const use = uses.get(`${name} ${text}`) ?? { name, text, count: 0 }
    use.count++
    uses.set(`${name} ${text}`, use)
  }
  const wanted = [...uses.values()].filter(({ count }) => count > 1).toSorted((a, b) => a.count - b.count)
  return new Map(wanted.map(({ name, text }) => [name, text]))
}

interface Sharing {
  readonly kind: 'responses' | 'parameters'
  readonly textByName: ReadonlyMap<string, string>
}

function referredTo({ kind, textByName }: Sharing, name: string, part: JsonObject): JsonObject {
  return textByName.get(name) === JSON.stringify(part) ? { $ref: `#/components/${kind}/${name}` } : part
}

const parameterName = ({ name }: JsonObject) =>
  String(name)
    .split('.')
    .map(word => `${word[0]?.toUpperCase()}${word.slice(1)}`)
    .join('')

const objects = (node: Json | undefined): readonly JsonObject[] => (Array.isArray(node) ? node.filter(isObject) : [])

/** What is not required needs no word for it. */
function withoutNot({ required, ...parameter }: JsonObject): JsonObject {
  return required === true ? { ...parameter, required } : parameter
}

interface Parts {
  readonly parameters: readonly JsonObject[]
  readonly responses: readonly (readonly [status: string, response: JsonObject])[]
}

function partsOf(operation: JsonObject): Parts {
  const { responses = {} } = operation
  const answers = isObject(responses) ? Object.entries(responses) : []
  const cacheable = answers.some(([status]) => status === '304')
  return {
    parameters: objects(operation.parameters).map(withoutNot),
    responses: answers.map(([status, answer]) => [
      status,
      withHeaders(status, isObject(answer) ? answer : {}, cacheable)
    ])
  }
}

function eachOperation(paths: JsonObject, change: (operation: JsonObject) => JsonObject): JsonObject {
  const methods = (path: Json) => Object.entries(isObject(path) ? path : {})
  return Object.fromEntries(
    Object.entries(paths).map(([path, inner]) => [
      path,
      Object.fromEntries(methods(inner).map(([method, one]) => [method, isObject(one) ? change(one) : one]))
    ])
  )
}

interface SharedParts {
  readonly paths: JsonObject
  readonly components: JsonObject
}

const asComponents = (textByName: ReadonlyMap<string, string>): JsonObject =>
  Object.fromEntries(
    [...textByName].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([name, part]) => [name, JSON.parse(part)])
  )

/** The paths with references in place of what several operations have, and the components these lead to. */
export function sharedParts(given: JsonObject): SharedParts {
  const all: Parts[] = []
  eachOperation(given, operation => {
    all.push(partsOf(operation))
    return operation
  })
  const parameters = shared(all.flatMap(parts => parts.parameters.map(part => [parameterName(part), part] as const)))
  const refusals = all.flatMap(({ responses }) => responses.filter(([status]) => status in nameByStatus))
  const responses = shared(refusals.map(([status, part]) => [nameByStatus[status] ?? '', part]))
  const paths = eachOperation(given, operation => {
    const parts = partsOf(operation)
    const own = parts.parameters.map(part =>
      referredTo({ kind: 'parameters', textByName: parameters }, parameterName(part), part)
    )
    const answers = parts.responses.map(([status, part]): [string, Json] => [
      status,
      referredTo({ kind: 'responses', textByName: responses }, nameByStatus[status] ?? '', part)
    ])
    return {
      ...operation,
      ...(own.length === 0 ? {} : { parameters: own }),
      responses: Object.fromEntries(answers)
    }
  })
  return { paths, components: { headers, parameters: asComponents(parameters), responses: asComponents(responses) } }
}
