/**
 * Writes a domain result as JSON text by its schema: SI names become wire names, numbers take the public unit and at most
 * six significant digits. A field the schema does not know, or a number that is not finite, is a fault of ours and throws.
 */
import { type JsonSchema, resolve } from '../../../contract/field/component.ts'
import { siField } from '../../../contract/field/wire-units.ts'
import { fullArrayText, sixDigitArrayText, sixDigitText } from './number-text.ts'

export type Digits = 'six' | 'full'
type Write = (value: unknown, digits: Digits) => string

function numberText(value: number, perSi: number, digits: Digits): string {
  if (!Number.isFinite(value)) throw new RangeError('a result holds a number that is not finite')
  const scaled = perSi === 1 ? value : value * perSi
  return digits === 'full' ? String(scaled) : sixDigitText(scaled)
}

/** The sentences behind the texts of an object: for whoever says it in another language, not for the answer. */
const SAID = 'said'

/** What JSON escapes; half a surrogate pair among it. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must be escaped
const escapes = /["\\\u0000-\u001f\ud800-\udfff]/

const quoted = (text: string): string => (escapes.test(text) ? JSON.stringify(text) : `"${text}"`)

function writePlain(value: unknown, digits: Digits): string {
  if (typeof value === 'string') return quoted(value)
  if (typeof value === 'number') return numberText(value, 1, digits)
  if (Array.isArray(value)) return `[${value.map(item => writePlain(item, digits)).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const members = Object.entries(value).filter(([name, inner]) => inner !== undefined && name !== SAID)
  return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${writePlain(inner, digits)}`).join(',')}}`
}

function objectWriter(schema: JsonSchema, writers: WeakMap<object, Write>): Write {
  const members = new Map(
    Object.entries(schema.properties ?? {}).map(([wireName, inner]) => {
      const field = siField(wireName)
      const key = `${JSON.stringify(wireName)}:`
      return [field.name, { key, further: `,${key}`, write: writerOf(inner, field.perSi, writers) }]
    })
  )
  const open = schema.additionalProperties !== false
  return (value, digits) => {
    const object = value as Readonly<Record<string, unknown>>
    let text = ''
    for (const name of Object.keys(object)) {
      const inner = object[name]
      if (inner === undefined || name === SAID) continue
      const member = members.get(name)
      if (member !== undefined) text += (text === '' ? member.key : member.further) + member.write(inner, digits)
      else if (open) text += `${text === '' ? '' : ','}${JSON.stringify(name)}:${writePlain(inner, digits)}`
      else throw new TypeError(`the contract has no field for ${name}`)
    }
    return `{${text}}`
  }
}

function unionWriter(schema: JsonSchema, perSi: number, writers: WeakMap<object, Write>): Write {
  const tag = schema.discriminator?.propertyName ?? 'kind'
  const branches = (schema.oneOf ?? schema.anyOf ?? []).map(branch => ({
    tag: resolve(branch).properties?.[tag]?.const,
    array: resolve(branch).type === 'array',
    write: writerOf(branch, perSi, writers)
  }))
  return (value, digits) => {
    const found = branches.find(branch =>
      Array.isArray(value)
        ? branch.array
        : branch.tag !== undefined && branch.tag === (value as Record<string, unknown>)[tag]
    )
    const chosen = found ?? branches.find(branch => branch.tag === undefined && branch.array === Array.isArray(value))
    if (chosen === undefined) throw new TypeError(`no branch of the contract takes this ${tag}`)
    return chosen.write(value, digits)
  }
}

function build(schema: JsonSchema, perSi: number, writers: WeakMap<object, Write>): Write {
  if (schema.oneOf !== undefined || schema.anyOf !== undefined) return unionWriter(schema, perSi, writers)
  if (schema.type === 'array' && schema.items !== undefined) {
    if (/^(number|integer)$/.test(resolve(schema.items).type ?? '')) {
      return (value, digits) => (digits === 'full' ? fullArrayText : sixDigitArrayText)(value as number[], perSi)
    }
    const write = writerOf(schema.items, perSi, writers)
    return (value, digits) => {
      const items = value as readonly unknown[]
      let text = ''
      for (let k = 0; k < items.length; k++) text += k === 0 ? write(items[k], digits) : `,${write(items[k], digits)}`
      return `[${text}]`
    }
  }
  if (schema.type === 'object') return objectWriter(schema, writers)
  return writePlain
}

const writeText: Write = (value, digits) => (typeof value === 'string' ? quoted(value) : writePlain(value, digits))

/** Numbers and texts have their writer at once; what holds others, itself perhaps, gets it when first written. */
function writerOf(reference: JsonSchema, perSi: number, writers: WeakMap<object, Write>): Write {
  const { type } = resolve(reference)
  if (type === 'number' || type === 'integer') return (value, digits) => numberText(value as number, perSi, digits)
  return type === 'string' ? writeText : lazily(reference, perSi, writers)
}

function lazily(reference: JsonSchema, perSi: number, writers: WeakMap<object, Write>): Write {
  let write: Write | undefined
  return (value, digits) => {
    if (write === undefined) {
      const schema = resolve(reference)
      write = perSi === 1 ? writers.get(schema) : undefined
      if (write === undefined) {
        write = build(schema, perSi, writers)
        if (perSi === 1) writers.set(schema, write)
      }
    }
    return write(value, digits)
  }
}

const shared = new WeakMap<object, Write>()

/** @returns a function from a domain value to JSON text */
export function jsonWriter(schema: JsonSchema): Write {
  return writerOf(schema, 1, shared)
}
