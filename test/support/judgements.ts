/** Judgement values of every room: which records there are, which a piece of work reads, and what else each could be. */
import path from 'node:path'
import { sourceFiles, src } from './source-map.ts'

export interface Judgement {
  readonly name: string
  readonly record: { value?: unknown; unit?: unknown; why?: unknown; source?: unknown }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** @param room  beginning of the paths of the rooms, below src */
export async function judgementsOf(room: string): Promise<readonly Judgement[]> {
  const found: Judgement[] = []
  for (const { file } of sourceFiles().filter(each => each.file.startsWith(room))) {
    if (!file.endsWith('/defaults.ts')) continue
    const tables = (await import(path.join(src, file))) as Readonly<Record<string, unknown>>
    for (const [table, records] of Object.entries(tables).filter(([, each]) => isRecord(each)))
      for (const [key, record] of Object.entries(records as object))
        if (isRecord(record)) found.push({ name: `${file} ${table}.${key}`, record })
  }
  return found
}

/** Names of records that a piece of work reads the value of. */
export function readsOf(judgements: readonly Judgement[], work: () => unknown): ReadonlySet<string> {
  const read = new Set<string>()
  const restore = judgements
    .filter(({ record }) => 'value' in record)
    .map(({ name, record }) => {
      const { value } = record
      Object.defineProperty(record, 'value', {
        configurable: true,
        enumerable: true,
        get: () => {
          read.add(name)
          return value
        }
      })
      return () =>
        Object.defineProperty(record, 'value', { value, writable: true, enumerable: true, configurable: true })
    })
  work()
  for (const back of restore) back()
  return read
}

const otherWord: Readonly<Record<string, string>> = {
  rms: 'peak',
  power: 'price',
  balance: 'level',
  rectangular: 'wedge',
  front: 'back',
  top: 'bottom',
  butt: 'mitre',
  between: 'over',
  over: 'between',
  parallel: 'series',
  lower: 'coil-heat',
  copper: 'aluminium',
  round: 'slot',
  sharp: 'flared',
  'full-width': 'own',
  free: 'flanged',
  flanged: 'free',
  mdf: 'chipboard',
  polyester: 'glass',
  everyday: 'small',
  metric: 'imperial',
  sixteenths: 'decimal',
  both: 'panels',
  'saw-and-router': 'jigsaw-and-drill',
  '0.75 mm²': '1.5 mm²'
}

/** Every number in it by a factor. */
function scaled(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor
  if (Array.isArray(value)) return value.map(each => scaled(each, factor))
  if (isRecord(value))
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, scaled(each, factor)]))
  return value
}

/** Other values of the same kind, near enough to be computable. */
export function others(value: unknown): readonly unknown[] {
  if (typeof value === 'number') {
    if (value === 0) return [0.05]
    return Number.isInteger(value) && value < 5 ? [value + 1, value + 3] : [value * 1.25, value * 2.5, value * 0.8]
  }
  if (typeof value === 'boolean') return [!value]
  if (Array.isArray(value) && typeof value[0] === 'string') return [value.slice(1)]
  if (typeof value === 'object') return [scaled(value, 1.25), scaled(value, 0.8)]
  return [otherWord[`${value}`]]
}
