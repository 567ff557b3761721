/** What a board, or a thing in a box, is called, from the name by which the layout knows it. */
import type { Said } from '../../../contract/sentences/form/template.ts'
import { listed, say } from '../../say.ts'

/** The words that such names are made of; what a caller named stays as it is. */
const words = [
  'top',
  'bottom',
  'front',
  'back',
  'side',
  'left',
  'right',
  'divider',
  'ledge',
  'port-plate',
  'port-cheek',
  'first-leg',
  'second-leg',
  'third-leg',
  'batten',
  'brace',
  'side-left',
  'side-right',
  'front-outer',
  'front-inner',
  'front-innermost',
  'front-chamber',
  'rear-chamber',
  'port',
  'driver',
  'passive-radiator',
  'terminal-cup',
  'amplifier-inside',
  'basket',
  'motor',
  'flange',
  'cone'
] as const

const known: ReadonlyMap<string, (typeof words)[number]> = new Map(words.map(word => [word.replace('-', ' '), word]))

function wordSaid(text: string): Said {
  const [, face] = /^on the (\w+)$/.exec(text) ?? []
  if (face !== undefined) return say('panel.on', { face: wordSaid(face) })
  const [, plain = text, number] = /^(.+?)(?: (\d+(?:–\d+)?))?$/.exec(text) ?? []
  const word = known.get(plain)
  if (word === undefined) return say('panel.named', { name: text })
  return number === undefined ? say(`panel.${word}`) : say('panel.numbered', { word: say(`panel.${word}`), number })
}

/** `port plate, first leg` and `batten, back 1–3`, word by word. */
export function panelSaid(name: string): Said {
  const [first = name, ...rest] = name.split(', ')
  const others = listed(rest.map(wordSaid))
  return rest.length === 0 ? wordSaid(first) : say('list.commas', { first: wordSaid(first), rest: others })
}
