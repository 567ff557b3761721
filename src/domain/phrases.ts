/** Texts that are found by their English wording, with what differs in them. */
import { type Printable, printed, type Writing } from './template.ts'

interface Pattern {
  readonly english: RegExp
  readonly names: readonly string[]
  readonly other: string
}

const NAME = /\{(\w+)\}/g

/** Literal text of a pattern. */
const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

function patternOf([english, other]: readonly [string, string]): Pattern {
  const source = english.split(NAME).map((part, at) => (at % 2 === 0 ? literal(part) : '(.+?)'))
  return {
    english: new RegExp(`^${source.join('')}$`, 's'),
    names: [...english.matchAll(NAME)].map(([, name = '']) => name),
    other
  }
}

const withMark = (text: string, { decimalMark }: Writing) => text.replace(/(\d)\.(?=\d)/g, `$1${decimalMark}`)

/**
 * @param entries  English wording and the other one; a text with names is tried after all that have none
 * @returns how an English text is said; as it is where nobody has said it yet
 */
export function phrasebook(entries: Readonly<Record<string, string>>, writing: Writing): (english: string) => string {
  const exact = new Map(Object.entries(entries))
  const patterns = Object.entries(entries)
    .filter(([english]) => english.includes('{'))
    .map(patternOf)
  /** A list with commas is said part by part where it is not known as a whole. */
  const inside = (text: string): string => {
    const whole = phrase(text)
    return whole === text ? withMark(text.split(', ').map(phrase).join(', '), writing) : whole
  }
  const phrase = (text: string): string => {
    const known = exact.get(text)
    if (known !== undefined) return known
    for (const { english, names, other } of patterns) {
      const found = english.exec(text)
      if (found === null) continue
      const values = new Map(names.map((name, at): [string, Printable] => [name, inside(found[at + 1] ?? '')]))
      return printed(other, name => values.get(name) ?? '', writing)
    }
    return text
  }
  return phrase
}
