/** From the address of the front door to the request of a plan, by the contract's own schema; and what is wrong, field by field. */
import { englishLanguage, type Language, told } from '../../domain/say.ts'
import type { ProblemError } from '../wire/problem/problem.ts'
import {
  alwaysAsked,
  coilChoices,
  type FrontField,
  type FrontRule,
  frontFields,
  frontRules,
  RULE
} from './front-fields.ts'
import { beyondBounds, measured, shownExample, shownUnit } from './front-measure.ts'
import { schemaOf } from './front-schema.ts'
import { choiceOf } from './front-words.ts'

export type Typed = Readonly<Record<string, string>>

export interface FrontFault {
  /** Absent where it belongs to no one field. */
  readonly field?: FrontField
  readonly text: string
}

const isText = (field: FrontField) => schemaOf(field).type === 'string' && field.choices === undefined

interface Read {
  readonly values: readonly (readonly [path: string, value: number | string])[]
  readonly fault?: FrontFault
}

/** How the sizes were measured; millimetres where the address does not say it as we do. */
export const ruleOf = (typed: Typed): FrontRule => frontRules.find(each => each === typed[RULE]) ?? 'mm'

function bareNumber(field: FrontField, rule: FrontRule, language: Language): string {
  const unit = shownUnit(field, rule)
  const example = shownExample(field, rule) || '30'
  return unit === ''
    ? told(language, 'front.fault.number', { example })
    : told(language, 'front.fault.number-in', { unit, example })
}

function read(field: FrontField, text: string, rule: FrontRule, language: Language): Read {
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
  if (choices !== undefined) {
    const numeric = schemaOf(field).type !== 'string'
    return { values: [[path, numeric ? Number(text) : text], ...beside] }
  }
  const amount = measured(field, text, rule)
  const wrong = amount === undefined ? bareNumber(field, rule, language) : beyondBounds(field, amount, rule, language)
  return wrong === undefined && amount !== undefined
    ? { values: [[path, amount], ...beside] }
    : { values: [], fault: { field, text: wrong ?? '' } }
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
  const known = new Set<string>([...frontFields.map(({ name }) => name), RULE])
  return Object.keys(typed)
    .filter(name => !known.has(name))
    .slice(0, 8)
    .map(name => ({ text: told(language, 'front.fault.unknown', { name: name.slice(0, 40) }) }))
}

/** A rule that is not ours is refused: the sizes would be read in another unit. */
function unknownRule(typed: Typed, language: Language): readonly FrontFault[] {
  const rule = typed[RULE] ?? 'mm'
  const all = frontRules.join(', ')
  return rule === ruleOf(typed) ? [] : [{ text: told(language, 'front.fault.choose', { all }) }]
}

/** @param typed  by short name; empty fields are left out of the request */
export function frontRequest(typed: Typed, language: Language = englishLanguage): FrontRequest {
  const rule = ruleOf(typed)
  const filled = frontFields.flatMap(field => {
    const text = (typed[field.name] ?? '').trim()
    return text === '' ? [] : [read(field, text, rule, language)]
  })
  const values = [...Object.entries(alwaysAsked), ...filled.flatMap(each => each.values)]
  const fixed = { signal: {} }
  return {
    request: { ...fixed, ...(lists(placed(values)) as object) },
    faults: [
      ...unknownNames(typed, language),
      ...unknownRule(typed, language),
      ...filled.flatMap(({ fault }) => (fault === undefined ? [] : [fault]))
    ]
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

/** The example as it is typed, by a rule in millimetres or in inches. */
export const exampleBy = (rule: FrontRule): Typed => ({
  ...Object.fromEntries(
    frontFields.flatMap(field => {
      const example = shownExample(field, rule)
      return example === '' ? [] : [[field.name, example]]
    })
  ),
  ...(rule === 'mm' ? {} : { units: 'imperial', [RULE]: rule })
})

export const frontExample: Typed = exampleBy('mm')

/** The example as its reader measures: North America has rules in inches. */
export const exampleIn = ({ tag }: Language): Typed => (tag === 'en-US' ? exampleBy('inch') : frontExample)
