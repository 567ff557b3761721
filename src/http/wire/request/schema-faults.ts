/** What is wrong with a request, from the validator's findings: one entry a fault, each with its pointer and bound. */
import type { ErrorObject } from 'ajv'
import { type JsonSchema, resolve } from '../../../contract/field/component.ts'
import type { Said } from '../../../contract/sentences/form/template.ts'
import { present } from '../../../domain/present.ts'
import { listed, say, worded } from '../../../domain/say.ts'
import type { ProblemError } from '../problem/problem.ts'
import { nearestName } from './nearest-name.ts'

/** More than this many faults tell a caller nothing new. */
const MOST_FAULTS = 50
const MOST_POINTER_CHARACTERS = 300

const escaped = (token: unknown) => String(token).replaceAll('~', '~0').replaceAll('/', '~1')

function pointer({ instancePath, keyword, params }: ErrorObject): string {
  const inside: Record<string, unknown> = {
    required: params.missingProperty,
    additionalProperties: params.additionalProperty,
    discriminator: params.tag
  }
  const token = inside[keyword]
  return (token === undefined ? instancePath : `${instancePath}/${escaped(token)}`)
    .slice(0, MOST_POINTER_CHARACTERS)
    .toWellFormed()
}

type Reading = { readonly code: string; readonly detail: Said; readonly bounds?: ProblemError['bounds'] }

const unknownValue = (allowed: readonly string[]): Reading => ({
  code: 'unknown-value',
  detail: say('contract.one-of', { allowed: allowed.join(', ') }),
  bounds: { allowed }
})

/** The kinds that a union is told apart by. */
function tagsOf({ params, parentSchema }: ErrorObject): readonly string[] {
  const branches = (parentSchema as JsonSchema | undefined)?.oneOf ?? []
  return branches.flatMap(branch => {
    const tag = resolve(branch).properties?.[String(params.tag)]
    return tag?.const === undefined ? (tag?.enum ?? []).map(String) : [String(tag.const)]
  })
}

function unknownField({ params, parentSchema }: ErrorObject): Said {
  const { properties = {}, required = [] } = (parentSchema as JsonSchema | undefined) ?? {}
  const given = String(params.additionalProperty)
  const meant = nearestName(given, required) ?? nearestName(given, Object.keys(properties))
  return say('contract.no-field', { meant: meant === undefined ? [] : say('contract.meant', { name: meant }) })
}

const readings: Record<string, (error: ErrorObject) => Reading> = {
  required: () => ({ code: 'missing-field', detail: say('contract.required') }),
  additionalProperties: error => ({ code: 'unknown-field', detail: unknownField(error) }),
  type: ({ params }) => ({
    code: 'wrong-type',
    detail: say('contract.type', { types: listed([params.type].flat(), 'list.or') })
  }),
  enum: ({ params }) => unknownValue(params.allowedValues),
  const: ({ params }) => ({
    code: 'unknown-value',
    detail: say('contract.const', { value: String(params.allowedValue) }),
    bounds: { allowed: [params.allowedValue] }
  }),
  discriminator: error => unknownValue(tagsOf(error)),
  minimum: ({ params }) => ({
    code: 'too-small',
    detail: say('contract.least', { limit: params.limit }),
    bounds: { minimum: params.limit }
  }),
  exclusiveMinimum: ({ params }) => ({
    code: 'too-small',
    detail: say('contract.above', { limit: params.limit }),
    bounds: { exclusiveMinimum: params.limit }
  }),
  maximum: ({ params }) => ({
    code: 'too-large',
    detail: say('contract.most', { limit: params.limit }),
    bounds: { maximum: params.limit }
  }),
  exclusiveMaximum: ({ params }) => ({
    code: 'too-large',
    detail: say('contract.below', { limit: params.limit }),
    bounds: { exclusiveMaximum: params.limit }
  }),
  minItems: ({ params }) => ({
    code: 'too-few',
    detail: say('contract.least-entries', { entries: params.limit }),
    bounds: { minItems: params.limit }
  }),
  maxItems: ({ params }) => ({
    code: 'too-many',
    detail: say('contract.most-entries', { entries: params.limit }),
    bounds: { maxItems: params.limit }
  }),
  minLength: ({ params }) => ({
    code: 'too-short',
    detail: say('contract.least-characters', { characters: params.limit }),
    bounds: { minLength: params.limit }
  }),
  maxLength: ({ params }) => ({
    code: 'too-long',
    detail: say('contract.most-characters', { characters: params.limit }),
    bounds: { maxLength: params.limit }
  }),
  pattern: () => ({ code: 'wrong-form', detail: say('contract.pattern') })
}

const umbrellas = new Set(['oneOf', 'anyOf', 'allOf', 'if', 'not'])

/** Of a union told apart by JSON type, only the branch of the type given speaks. */
function speaksOfOtherBranch(error: ErrorObject, all: readonly ErrorObject[]): boolean {
  if (error.keyword !== 'type' || !/\/anyOf\/\d+\/type$/.test(error.schemaPath)) return false
  return all.some(
    other =>
      other !== error &&
      other.keyword !== 'type' &&
      !umbrellas.has(other.keyword) &&
      other.instancePath.startsWith(error.instancePath)
  )
}

export function schemaFaults(found: readonly ErrorObject[]): readonly ProblemError[] {
  const deepest = found.filter(error => !umbrellas.has(error.keyword) && !speaksOfOtherBranch(error, found))
  const seen = new Set<string>()
  const faults: ProblemError[] = []
  for (const error of deepest.length > 0 ? deepest : found) {
    const at = pointer(error)
    const { code, detail, bounds } = readings[error.keyword]?.(error) ?? {
      code: 'invalid',
      detail: say('contract.unfit')
    }
    const reading = { code, ...worded({ detail }), ...present({ bounds }) }
    if (seen.has(`${at} ${code}`) || (code === 'unknown-value' && seen.has(`${at} missing-field`))) continue
    seen.add(`${at} ${code}`)
    faults.push({ pointer: at, ...reading })
    if (faults.length === MOST_FAULTS) break
  }
  return faults
}
