/** Names of boards, holes and sheets as the reader calls them; the layout knows them by their English names. */
import type { CutOut } from '../../contract/boxes/panel.ts'
import { panelSaid } from '../../domain/box/shell/panel-words.ts'
import { spoken, told } from '../../domain/say.ts'
import type { Reader } from './number-text.ts'

/** `side`, `port plate, first leg`, `batten, back 1`. */
export const panelName = (name: string, { language }: Pick<Reader, 'language'>): string =>
  spoken(panelSaid(name), language)

const holes = {
  driver: 'draw.hole.driver',
  'passive radiator': 'draw.hole.passive-radiator',
  port: 'draw.hole.port',
  'port mouth': 'draw.hole.port-mouth',
  'terminal cup': 'draw.hole.terminal-cup',
  window: 'draw.hole.window'
} as const

const isHole = (name: string): name is keyof typeof holes => Object.hasOwn(holes, name)

/** `driver 2`; a name the caller gave stays. */
export function holeName(
  { label, purpose }: Pick<CutOut, 'label' | 'purpose'>,
  reader: Pick<Reader, 'language'>
): string {
  const { language } = reader
  if (purpose === 'groove' || purpose === 'rebate') {
    return told(language, `draw.${purpose}-for`, { part: panelName(label, reader) })
  }
  const [, name = label, number] = /^(.+?)(?: (\d+))?$/.exec(label) ?? []
  if (!isHole(name)) return label
  const word = told(language, holes[name])
  return number === undefined ? word : `${word} ${number}`
}

/** What a sheet is called where the caller names none. */
export const USUAL_SHEET = 'full sheet'

export const sheetName = (name: string, { language }: Pick<Reader, 'language'>): string =>
  name === USUAL_SHEET ? told(language, 'draw.full-sheet') : name
