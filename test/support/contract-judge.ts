/** The committed contract as an independent judge: nothing of the service's own serialiser or validator takes part. */
import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { parse } from 'yaml'

export interface Schema {
  readonly $ref?: string
  readonly type?: string | readonly string[]
  readonly const?: unknown
  readonly enum?: readonly unknown[]
  readonly properties?: Readonly<Record<string, Schema>>
  readonly required?: readonly string[]
  readonly items?: Schema
  readonly oneOf?: readonly Schema[]
  readonly anyOf?: readonly Schema[]
  readonly allOf?: readonly Schema[]
  readonly additionalProperties?: boolean | Schema
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
  readonly exclusiveMaximum?: number
  readonly minItems?: number
  readonly maxItems?: number
  readonly minLength?: number
  readonly maxLength?: number
  readonly pattern?: string
}

// biome-ignore lint/suspicious/noExplicitAny: the document is read as the YAML it is
export const committed: any = parse(readFileSync(new URL('../../openapi.yaml', import.meta.url), 'utf8'))

/** The judge takes no field that the contract does not name, though callers are told to: else a misspelt one would be seen by nobody. */
function closedCopy() {
  const copy = structuredClone(committed)
  for (const schema of Object.values<Record<string, unknown>>(copy.components.schemas)) {
    if (schema.properties !== undefined) schema.additionalProperties ??= false
  }
  return copy
}

const judge = new Ajv2020({ strict: false, allErrors: true, validateFormats: false })
judge.addSchema(closedCopy(), 'openapi')
const escaped = (text: string) => text.replaceAll('~', '~0').replaceAll('/', '~1')

const responseAt = (path: string, method: string, status: number): { readonly $ref?: string } =>
  committed.paths[path]?.[method]?.responses[status] ?? {}

/** @returns nothing where the body is what the contract promises for this status */
export function contractFaults(
  path: string,
  status: number,
  mediaType: string,
  body: unknown,
  method = 'post'
): unknown {
  const bare = mediaType.split(';')[0] ?? ''
  const { $ref = `#/paths/${escaped(path)}/${method}/responses/${status}` } = responseAt(path, method, status)
  const pointer = `openapi${$ref}/content/${escaped(bare)}/schema`
  const validate = judge.getSchema(pointer)
  if (validate === undefined) return `nothing at ${pointer}`
  return validate(body) ? [] : validate.errors
}

export function resolved(schema: Schema): Schema {
  const $ref = schema.$ref ?? (schema.allOf?.length === 1 ? schema.allOf[0]?.$ref : undefined)
  return $ref === undefined ? schema : committed.components.schemas[$ref.split('/').pop() ?? '']
}

export function requestSchema(path: string): Schema {
  return committed.paths[path].post.requestBody.content['application/json'].schema
}

/** Every reading of a schema: itself, or the branches of its union. */
export function branches(schema: Schema): readonly Schema[] {
  const here = resolved(schema)
  const union = here.oneOf ?? here.anyOf
  return union === undefined ? [here] : union.flatMap(branches)
}

const tokensOf = (pointer: string) =>
  pointer
    .split('/')
    .slice(1)
    .map(token => token.replaceAll('~1', '/').replaceAll('~0', '~'))

/** Whether a pointer names a value in the request. */
export function pointsAt(request: unknown, pointer: string): boolean {
  let here = request
  for (const token of tokensOf(pointer)) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, token)) return false
    here = (here as Record<string, unknown>)[token]
  }
  return true
}

/** Whether a pointer names a field that the contract knows, present in this request or not. */
export function isKnownField(path: string, pointer: string): boolean {
  let here: readonly Schema[] = branches(requestSchema(path))
  for (const token of tokensOf(pointer)) {
    here = here.flatMap(schema => {
      const next = /^\d+$/.test(token) && schema.items !== undefined ? schema.items : schema.properties?.[token]
      return next === undefined ? [] : branches(next)
    })
  }
  return here.length > 0
}
