/** How each kind of setting is read from its text; `undefined` where it does not read. */
import { isIP } from 'node:net'

export interface ApiKey {
  readonly holder: string
  readonly sha256: string
}

type Reading<Value> = (text: string) => Value | undefined
export interface Setting<Value> {
  readonly variable: string
  readonly byDefault: string
  readonly read: Reading<Value>
  readonly allowed: string
  readonly meaning: string
}

export function whole(from: number, to: number): Pick<Setting<number>, 'read' | 'allowed'> {
  return {
    allowed: `a whole number from ${from} to ${to}`,
    read: text => (/^\d{1,9}$/.test(text) && Number(text) >= from && Number(text) <= to ? Number(text) : undefined)
  }
}

const listed = (text: string) =>
  text
    .split(',')
    .map(part => part.trim())
    .filter(part => part !== '')

export function readProxies(text: string): false | number | readonly string[] | undefined {
  if (text === 'false' || text === '0') return false
  if (/^\d{1,2}$/.test(text)) return Number(text)
  const networks = listed(text)
  return networks.length > 0 && networks.every(isNetwork) ? networks : undefined
}

/** A range with a name, an address, or an address with the length of its prefix. */
function isNetwork(text: string): boolean {
  if (/^(loopback|linklocal|uniquelocal)$/.test(text)) return true
  const [address = '', prefix = '0', ...rest] = text.split('/')
  const bits = { 0: -1, 4: 32, 6: 128 }[isIP(address)] ?? -1
  return rest.length === 0 && /^\d{1,3}$/.test(prefix) && Number(prefix) <= bits
}

/** Steps of plain letters, none of them `.` or `..`. */
export const readBasePath = (text: string): string | undefined =>
  text === '' || (text.length <= 100 && /^(\/(?!\.{1,2}(\/|$))[\w.~-]+)+$/.test(text)) ? text : undefined

export function readOrigins(text: string): readonly string[] | undefined {
  const origins = listed(text)
  const fits = (origin: string) => origin === '*' || (URL.canParse(origin) && new URL(origin).origin === origin)
  return origins.every(fits) ? origins : undefined
}

/** An address with a host; none where it is empty. */
export function readRedis(text: string): string | undefined {
  const named = /^rediss?:\/\//.test(text) && URL.canParse(text) && new URL(text).hostname !== ''
  return text === '' || named ? text : undefined
}

export function readKeys(text: string): readonly ApiKey[] | undefined {
  const entries = listed(text).map(entry => /^([\w.-]{1,60}):([\da-f]{64})$/i.exec(entry))
  const keys = entries.map(entry => ({ holder: entry?.[1] ?? '', sha256: (entry?.[2] ?? '').toLowerCase() }))
  return entries.includes(null) ? undefined : keys
}

export const oneOf = (values: readonly string[]): Pick<Setting<string>, 'read' | 'allowed'> => ({
  allowed: `one of ${values.join(', ')}`,
  read: text => (values.includes(text) ? text : undefined)
})
