/** What a part of the circuit is called, from the name by which the circuit of the plan knows it. */
import type { Said } from '../../contract/sentences/form/template.ts'
import { say } from '../../domain/say.ts'

const known = {
  battery: 'part.battery',
  'second battery': 'part.second-battery',
  'main fuse': 'part.main-fuse',
  'battery sensor': 'part.battery-sensor'
} as const

/** Of several alike each bears its number: `main 2 fuse`. */
export function partSaid(name: string): Said | string {
  const [, number] = /(?<= )(\d+)(?= |$)/.exec(name) ?? []
  const plain = name.replace(/ \d+(?= |$)/, '')
  const id = known[plain as keyof typeof known]
  if (id === undefined) return name
  return number === undefined ? say(id) : say('part.numbered', { part: say(id), number })
}
