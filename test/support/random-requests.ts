/** Requests made from the contract: valid ones, valid ones near an example, and broken ones of many kinds. All seeded. */
import { branches, requestSchema, resolved, type Schema } from './contract-judge.ts'

export type Random = () => number

/** mulberry32, public domain, by Tommy Ettinger. */
export function seeded(seed: number): Random {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

export const pick = <Item>(random: Random, items: readonly Item[]): Item =>
  items[Math.floor(random() * items.length)] as Item

/** Often the very bounds, else spread over the decades between them. */
function numberOf(schema: Schema, random: Random): number {
  const low = schema.minimum ?? schema.exclusiveMinimum ?? -1000
  const high = schema.maximum ?? schema.exclusiveMaximum ?? Math.max(1000, low * 1000)
  const whole = schema.type === 'integer'
  const roll = random()
  const span = high - low
  let value = low + span * random()
  if (roll < 0.12) value = schema.minimum ?? low + span * 1e-9
  else if (roll < 0.24) value = schema.maximum ?? high - span * 1e-9
  else if (roll < 0.7 && low >= 0) value = low + span * 10 ** (-6 * random())
  if (whole) return Math.min(high, Math.max(Math.ceil(low), Math.round(value)))
  return roll < 0.9 ? Number(value.toPrecision(4)) : value
}

const texts = ['Björn’s 12" sub', '<b>&amp;</b>', "'; drop --", 'ﬁ‮abc', '😀🚗', '=1+1', 'a'.repeat(60), 'x']

function textOf(schema: Schema, random: Random): string {
  const most = schema.maxLength ?? 60
  const text = pick(random, texts).slice(0, most)
  return text.isWellFormed() && text.length >= (schema.minLength ?? 0)
    ? text
    : 'x'.repeat(Math.max(1, schema.minLength ?? 1))
}

function objectOf(schema: Schema, random: Random, share: number): Record<string, unknown> {
  const entries = Object.entries(schema.properties ?? {}).filter(
    ([name]) => schema.required?.includes(name) === true || random() < share
  )
  return Object.fromEntries(entries.map(([name, inner]) => [name, valueFor(inner, random, share)]))
}

function arrayOf(schema: Schema, random: Random, share: number): unknown[] {
  const least = schema.minItems ?? 0
  const most = schema.maxItems ?? least + 3
  const length = random() < 0.03 ? Math.min(most, 60) : Math.min(most, least + Math.floor(random() * 4))
  return Array.from({ length }, () => valueFor(schema.items ?? {}, random, share))
}

/** A value that the schema takes, unless its pattern is too narrow for the texts above. */
export function valueFor(given: Schema, random: Random, share = 0.4): unknown {
  const schema = resolved(given)
  const union = schema.oneOf ?? schema.anyOf
  if (union !== undefined) return valueFor(pick(random, union), random, share)
  if (schema.const !== undefined) return schema.const
  if (schema.enum !== undefined) return pick(random, schema.enum)
  const type = Array.isArray(schema.type) ? pick(random, schema.type as readonly string[]) : schema.type
  if (type === 'number' || type === 'integer') return numberOf({ ...schema, type }, random)
  if (type === 'string') return textOf(schema, random)
  if (type === 'boolean') return random() < 0.5
  if (type === 'array') return arrayOf(schema, random, share)
  if (type === 'object') return objectOf(schema, random, share)
  return null
}

/** A field of a request, or one that may stand there, with the schemas it may have. */
export interface Spot {
  /** `/enclosure/ports/[]/lengthMm`; what a reading is called stands in it, so that a field of each branch is one of its own. */
  readonly id: string
  readonly holder: Record<string, unknown>
  readonly name: string
  readonly schemas: readonly Schema[]
  readonly optional: boolean
}

/** How a request is walked: which readings of a value are followed, what they are called, and whether absent fields count. */
interface Walk {
  readonly readings: (value: unknown, schemas: readonly Schema[]) => readonly Schema[]
  readonly called: (value: unknown, schemas: readonly Schema[]) => string
  readonly absent: boolean
}

const everyReading: Walk = { readings: (_, schemas) => schemas, called: () => '', absent: false }

/** Every field of a request with the schemas that may stand there. */
export function spots(value: unknown, schemas: readonly Schema[], walk = everyReading, at = ''): readonly Spot[] {
  if (typeof value !== 'object' || value === null) return []
  const holder = value as Record<string, unknown>
  const own = walk.readings(value, schemas)
  const here = `${at}${walk.called(value, schemas)}`
  const known =
    walk.absent && !Array.isArray(value) ? own.flatMap(({ properties = {} }) => Object.keys(properties)) : []
  return [...new Set([...Object.keys(holder), ...known])].flatMap(name => {
    const inner = own.flatMap(schema => {
      const next = Array.isArray(value) ? schema.items : schema.properties?.[name]
      return next === undefined ? [] : branches(next)
    })
    const id = `${here}/${Array.isArray(value) ? '[]' : name}`
    const optional = own.every(({ required }) => required?.includes(name) !== true)
    return [{ id, holder, name, schemas: inner, optional }, ...spots(holder[name], inner, walk, id)]
  })
}

/** An example with a few fields changed within their bounds, added or left out: mostly answered, unlike pure chance. */
export function nearExample(path: string, example: unknown, random: Random): unknown {
  const request = structuredClone(example)
  const schemas = branches(requestSchema(path))
  for (let changes = 1 + Math.floor(random() * 3); changes > 0; changes--) {
    const all = spots(request, schemas)
    if (all.length === 0) return request
    const { holder, name, schemas: inner } = pick(random, all)
    const branch = inner.length === 0 ? undefined : pick(random, inner)
    if (branch === undefined) continue
    const old = holder[name]
    const nudged = typeof old === 'number' && branch.type === 'number' && random() < 0.6
    holder[name] = nudged ? within(branch, old * (0.5 + random())) : valueFor(branch, random)
  }
  return request
}

function within(schema: Schema, value: number): number {
  const low = schema.minimum ?? (schema.exclusiveMinimum === undefined ? -Infinity : schema.exclusiveMinimum + 1e-9)
  const high = schema.maximum ?? Infinity
  return Math.min(high, Math.max(low, Number(value.toPrecision(5))))
}

const nonsense = [
  null,
  true,
  -1,
  0,
  1e308,
  -1e308,
  5e-324,
  1.5,
  '',
  ' ',
  '12',
  '0x10',
  'x'.repeat(2000),
  '\u0000',
  '￿',
  [],
  {},
  [[[]]],
  [5],
  { a: 1 },
  Number.MAX_SAFE_INTEGER
]

/** Bodies as text, since many faults cannot be written from a value. */
export function brokenBody(path: string, example: unknown, random: Random): string {
  const request = structuredClone(example) as Record<string, unknown>
  const all = spots(request, branches(requestSchema(path)))
  const { holder, name } = all.length === 0 ? { holder: request, name: 'x' } : pick(random, all)
  const text = () => JSON.stringify(request)
  const breakers: readonly (() => string)[] = [
    () => {
      holder[name] = pick(random, nonsense)
      return text()
    },
    () => {
      delete holder[name]
      return text()
    },
    () => {
      holder[pick(random, ['lenghtMm', '', 'a/b~c', '💥', 'toString', 'x'.repeat(500)])] = pick(random, nonsense)
      return text()
    },
    () => text().replace('{', `{${JSON.stringify(Object.keys(request)[0] ?? 'a')}:1,`),
    () => text().replace('{', `{"${pick(random, ['__proto__', 'constructor', 'prototype'])}":{"x":1},`),
    () => text().slice(0, Math.floor(random() * text().length)),
    () => text() + pick(random, ['}', 'x', text(), '\u0000', ',']),
    () =>
      text().replace(
        /-?\d+(\.\d+)?/,
        pick(random, ['1e999', '-1e999', 'NaN', 'Infinity', '01', '+1', '.5', '1.', '0x1', '9'.repeat(400)])
      ),
    () => `${'{"a":'.repeat(17 + Math.floor(random() * 2000))}1`,
    () => `${'['.repeat(2000)}${']'.repeat(2000)}`,
    () => text().replace('"', '"\\ud800'),
    () => text().replaceAll('"', "'"),
    () =>
      pick(random, [
        '',
        ' ',
        'null',
        'true',
        '0',
        '"x"',
        '[]',
        '[{}]',
        '\ufeff',
        '{}',
        '{"":0}',
        '[1,]',
        '{"a":}',
        '\t',
        '"\t"',
        '{"a":1,,}',
        '//x',
        '{a:1}'
      ])
  ]
  return pick(random, breakers)()
}
