/** What a part of the circuit is called, from the name by which the circuit of the plan knows it. */
import type { circuitPartSentences } from '../../contract/sentences/english/electric/circuit-part.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { type Caution, resaid } from '../../domain/caution.ts'
import { capital, englishLanguage } from '../../domain/say.ts'

type PartId = keyof typeof circuitPartSentences

/** Of several alike each bears its number: `main 2 fuse`. */
function knownPart(name: string): Said | undefined {
  const [, number] = /(?<= )(\d+)(?= |$)/.exec(name) ?? []
  const plain = number === undefined ? name : name.replace(` ${number}`, ' n')
  const id: `part.circuit.${string}` = `part.circuit.${plain.replaceAll(' ', '-')}`
  if (englishLanguage.templates[id] === undefined) return undefined
  return number === undefined ? { id: id as PartId } : { id: id as PartId, values: { number } }
}

export const partSaid = (name: string): Said | string => knownPart(name) ?? name

const lowered = (name: string) => name.slice(0, 1).toLowerCase() + name.slice(1)

function renamed(value: NonNullable<Said['values']>[string]): NonNullable<Said['values']>[string] {
  if (typeof value === 'number') return value
  if (typeof value !== 'string') return 'id' in value ? withNames(value) : value.map(withNames)
  const same = knownPart(value)
  if (same !== undefined) return same
  const first = knownPart(lowered(value))
  return first === undefined ? value : capital(first)
}

function withNames({ id, values }: Said): Said {
  if (values === undefined) return { id }
  return { id, values: Object.fromEntries(Object.entries(values).map(([name, value]) => [name, renamed(value)])) }
}

/** The same in English, and with the names of the plan's own parts in any other language. */
export const withPartNames = (caution: Caution): Caution => resaid(caution, withNames(caution.said.message))
