/**
 * Reads a body as one I-JSON text (RFC 8259 as narrowed by RFC 7493): what JSON.parse would quietly change or keep,
 * a repeated name, a number beyond double precision's range, half a surrogate pair, is refused with a pointer.
 */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { say, worded } from '../../../domain/say.ts'
import type { ProblemError } from '../problem/problem.ts'
import { Refusal } from '../problem/refusal.ts'

/** Deeper than any request of the contract. */
export const MOST_DEPTH = 16
/** No list of a request is longer; what is, is refused before anything looks at its entries. */
export const MOST_ITEMS = 2000
const MOST_FAULTS = 50
/** Names that reach into an object's prototype in careless code. */
const forbiddenNames = new Set(['__proto__', 'constructor', 'prototype'])

interface Fault {
  readonly code: string
  readonly detail: Said
}

interface Level {
  readonly names: Set<string> | undefined
  token: string
  index: number
}

const escaped = (token: string) => token.replaceAll('~', '~0').replaceAll('/', '~1').slice(0, 300).toWellFormed()
const pointerTo = (levels: readonly Level[]) => levels.map(({ token }) => `/${escaped(token)}`).join('')

const [QUOTE, COMMA, MINUS, ZERO, NINE, BACKSLASH] = [34, 44, 45, 48, 57, 92]
const [LIST, LIST_END, OBJECT, OBJECT_END] = [91, 93, 123, 125]

/** Index just behind the string that starts at `start`; the text is known to be JSON. */
function endOfString(text: string, start: number): number {
  let at = start + 1
  for (let code = text.charCodeAt(at); code !== QUOTE; code = text.charCodeAt(at)) at += code === BACKSLASH ? 2 : 1
  return at + 1
}

function nameFault(name: string, known: Set<string>): Fault | undefined {
  if (forbiddenNames.has(name)) return { code: 'forbidden-name', detail: say('service.forbidden-name') }
  if (known.has(name)) return { code: 'duplicate-name', detail: say('service.duplicate-name') }
  return undefined
}

interface Walk {
  readonly text: string
  readonly levels: Level[]
  readonly faults: ProblemError[]
  awaitsName: boolean
}

function complain({ levels, faults }: Pick<Walk, 'levels' | 'faults'>, code: string, detail: Said): void {
  faults.push({ pointer: pointerTo(levels), code, ...worded({ detail }) })
}

/** Each step takes the index of its first character and returns the index behind its last. */
function passString(walk: Walk, at: number): number {
  const end = endOfString(walk.text, at)
  const inside = walk.text.slice(at + 1, end - 1)
  const value: string = inside.includes('\\') ? JSON.parse(`"${inside}"`) : inside
  const level = walk.levels.at(-1)
  if (!value.isWellFormed()) {
    // A broken name has no pointer; the object that holds it has.
    const place = walk.awaitsName ? { ...walk, levels: walk.levels.slice(0, -1) } : walk
    complain(place, 'broken-character', say('service.broken-character'))
  }
  if (walk.awaitsName && level?.names !== undefined) {
    level.token = value
    const fault = nameFault(value, level.names)
    if (fault !== undefined) complain(walk, fault.code, fault.detail)
    level.names.add(value)
    walk.awaitsName = false
  }
  return end
}

/** Smaller than any quantity here; further down, conversion and powers would lose digits or end at zero. */
const LEAST_MAGNITUDE = 1e-30

/** What is wrong with a number that JSON.parse has taken, `1e999` and `1e-999` for two. */
export function numberFault(digits: string): Fault | undefined {
  const size = Math.abs(Number(digits))
  if (!Number.isFinite(size)) {
    return { code: 'too-large', detail: say('service.number-too-large') }
  }
  const isNought = !/[1-9]/.test(digits.split(/e/i)[0] ?? '')
  if (size >= LEAST_MAGNITUDE || isNought) return undefined
  return { code: 'too-small', detail: say('service.number-too-small', { least: LEAST_MAGNITUDE }) }
}

const numberText = /-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?/y

function passNumber(walk: Walk, at: number): number {
  numberText.lastIndex = at
  const digits = numberText.exec(walk.text)?.[0] ?? '0'
  const fault = numberFault(digits)
  if (fault !== undefined) complain(walk, fault.code, fault.detail)
  return at + digits.length
}

function passMark(walk: Walk, at: number, code: number): number {
  const { levels } = walk
  const level = levels.at(-1)
  if (code === OBJECT || code === LIST) {
    walk.awaitsName = code === OBJECT
    levels.push({ names: walk.awaitsName ? new Set() : undefined, token: walk.awaitsName ? '' : '0', index: 0 })
  } else if (code === OBJECT_END || code === LIST_END) {
    levels.pop()
    walk.awaitsName = false
  } else if (code === COMMA && level !== undefined) {
    walk.awaitsName = level.names !== undefined
    if (!walk.awaitsName) level.token = String(++level.index)
  }
  return at + 1
}

function refuseEndless({ levels }: Walk): void {
  const level = levels.at(-1)
  if (level === undefined || level.names !== undefined || level.index < MOST_ITEMS) return
  const pointer = pointerTo(levels.slice(0, -1))
  const detail = say('contract.most-entries', { entries: MOST_ITEMS })
  throw new Refusal('invalid-request', say('service.list-too-long'), {
    errors: [{ pointer, code: 'too-many', ...worded({ detail }), bounds: { maxItems: MOST_ITEMS } }]
  })
}

/** Walks a text that JSON.parse has accepted, once. */
function quietChanges(text: string): readonly ProblemError[] {
  const walk: Walk = { text, levels: [], faults: [], awaitsName: false }
  for (let at = 0; at < text.length && walk.faults.length < MOST_FAULTS; ) {
    const code = text.charCodeAt(at)
    if (code === QUOTE) at = passString(walk, at)
    else if (code === MINUS || (code >= ZERO && code <= NINE)) at = passNumber(walk, at)
    else at = passMark(walk, at, code)
    refuseEndless(walk)
    if (walk.levels.length > MOST_DEPTH) {
      complain(
        { ...walk, levels: walk.levels.slice(0, -1) },
        'too-deep',
        say('service.too-deep', { levels: MOST_DEPTH })
      )
      break
    }
  }
  return walk.faults
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new Refusal('unreadable-body', say('service.body-no-json'))
  }
}

/** @throws Refusal `unreadable-body` with a pointer to each fault; `invalid-request` for a list beyond the contract's longest */
export function readJson(text: string): unknown {
  const value = parsed(text)
  const errors = quietChanges(text)
  if (errors.length > 0) {
    throw new Refusal('unreadable-body', say('service.body-faults', { faults: errors.length }), { errors })
  }
  return value
}
