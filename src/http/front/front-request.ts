/** From the address of the front door to the request of a plan, by the contract's own schema; and what is wrong, field by field. */
import { branchesOf, type JsonSchema } from '../../contract/field/component.ts'
import { englishLanguage, type Language, told } from '../../domain/say.ts'
import { planSystem } from '../operations/systems/plans.ts'
import type { ProblemError } from '../wire/problem/problem.ts'
import { alwaysAsked, coilChoices, type FrontField, frontFields } from './front-fields.ts'
import { choiceOf } from './front-words.ts'

export type Typed = Readonly<Record<string, string>>

export interface FrontFault {
  /** Absent where it belongs to no one field. */
  readonly field?: FrontField
  readonly text: string
}

const inside = (schemas: readonly JsonSchema[], token: string): readonly JsonSchema[] =>
  schemas.flatMap(schema => {
    const next = schema.items !== undefined && /^\d+$/.test(token) ? schema.items : schema.properties?.[token]
    return next === undefined ? [] : branchesOf(next)
  })

/** The contract's schema of a field. */
export function schemaOf({ path }: FrontField): JsonSchema {
  const [found] = path.split('.').reduce(inside, branchesOf(planSystem.body))
  if (found === undefined) throw new TypeError(`the contract has no ${path}`)
  return found
}

/** The unit of a quantity, as the contract gives it at the end of its description; none of a pure number. */
export function unitOf(field: FrontField): string {
  const [, unit = '1'] = /\[([^\]]+)\]$/.exec(schemaOf(field).description ?? '') ?? []
  return unit === '1' || field.choices !== undefined ? '' : unit
}

const isText = (field: FrontField) => schemaOf(field).type === 'string' && field.choices === undefined

/** Comma or point; anything else is refused, a unit too: it may be another one. */
const number = /^-?\d+(?:[.,]\d+)?$/

interface Read {
  readonly values: readonly (readonly [path: string, value: number | string])[]
  readonly fault?: FrontFault
}

function bareNumber(field: FrontField, language: Language): string {
  const unit = unitOf(field)
  const example = field.example || '30'
  return unit === ''
    ? told(language, 'front.fault.number', { example })
    : told(language, 'front.fault.number-in', { unit, example })
}

function read(field: FrontField, text: string, language: Language): Read {
  const { path, choices, also = {} } = field
  if (choices !== undefined && !choices.includes(text)) {
    const all = choices.map(value => choiceOf(field, value, language)).join(', ')
    return { values: [], fault: { field, text: told(language, 'front.fault.choose', { all }) } }
  }
  if (choices === coilChoices) {
    const [count = '', ohm = ''] = text.split('x')
    return {
      values: [
        [`${path}.count`, Number(count)],
        [`${path}.ratedOhm`, Number(ohm)]
      ]
    }
  }
  const beside = Object.entries(also)
  if (isText(field)) return { values: [[path, text]] }
  if (!number.test(text) && choices === undefined) {
    return { values: [], fault: { field, text: bareNumber(field, language) } }
  }
  const numeric = schemaOf(field).type !== 'string'
  return { values: [[path, numeric ? Number(text.replace(',', '.')) : text], ...beside] }
}

interface Tree {
  [token: string]: Tree | unknown
}

function placed(values: readonly (readonly [string, number | string])[]): Tree {
  const tree: Tree = {}
  for (const [path, value] of values) {
    const tokens = path.split('.')
    const last = tokens.pop() as string
    const branch = tokens.reduce<Tree>((here, token) => {
      here[token] ??= {}
      return here[token] as Tree
    }, tree)
    branch[last] = value
  }
  return tree
}

/** Numbered entries become a list, without the gaps of powers that a sheet does not give. */
function lists(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).map(([token, inner]) => [token, lists(inner)] as const)
  return entries.every(([token]) => /^\d+$/.test(token)) && entries.length > 0
    ? entries.map(([, inner]) => inner)
    : Object.fromEntries(entries)
}

interface FrontRequest {
  readonly request: object
  readonly faults: readonly FrontFault[]
}

/** Names that the form does not have are refused: a slip in an address would change the plan without a word. */
function unknownNames(typed: Typed, language: Language): readonly FrontFault[] {
  const known = new Set<string>(frontFields.map(({ name }) => name))
  return Object.keys(typed)
    .filter(name => !known.has(name))
    .slice(0, 8)
    .map(name => ({ text: told(language, 'front.fault.unknown', { name: name.slice(0, 40) }) }))
}

/** @param typed  by short name; empty fields are left out of the request */
export function frontRequest(typed: Typed, language: Language = englishLanguage): FrontRequest {
  const filled = frontFields.flatMap(field => {
    const text = (typed[field.name] ?? '').trim()
    return text === '' ? [] : [read(field, text, language)]
  })
  const values = [...Object.entries(alwaysAsked), ...filled.flatMap(each => each.values)]
  const fixed = { signal: {} }
  return {
    request: { ...fixed, ...(lists(placed(values)) as object) },
    faults: [...unknownNames(typed, language), ...filled.flatMap(({ fault }) => (fault === undefined ? [] : [fault]))]
  }
}

const pathOf = (pointer: string) => pointer.slice(1).replaceAll('/', '.')

/** The field of an entry of a list: entries count without the fields that were left empty. */
function entryField(path: string, typed: Typed): FrontField | undefined {
  const [, before = '', place = '', after = ''] = /^(.*?\.)(\d+)(\..*)?$/.exec(path) ?? []
  const alike = frontFields.filter(
    each => each.path.startsWith(before) && each.path.endsWith(after) && (typed[each.name] ?? '').trim() !== ''
  )
  return before === '' ? undefined : alike[Number(place)]
}

/** Faults of the contract beside the field they are about: the field itself, else the first one below or above the place. */
export function frontFaults(errors: readonly ProblemError[], typed: Typed): readonly FrontFault[] {
  return errors.map(({ pointer, detail }) => {
    const path = pathOf(pointer)
    const near = (each: FrontField) => each.path.startsWith(`${path}.`) || path.startsWith(`${each.path}.`)
    const field =
      entryField(path, typed) ??
      frontFields.find(each => each.path === path) ??
      (path === '' ? undefined : frontFields.find(near))
    return field === undefined ? { text: detail } : { field, text: detail }
  })
}

/** The example as it is typed. */
export const frontExample: Typed = Object.fromEntries(
  frontFields.filter(({ example }) => example !== '').map(({ name, example }) => [name, example])
)

/** The example as its reader measures: a plan for North America is drawn in inches. */
export const exampleIn = ({ tag }: Language): Typed =>
  tag === 'en-US' ? { ...frontExample, units: 'imperial' } : frontExample
