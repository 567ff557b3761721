/** What a board is made of, from the word by which a request names it. */
import { boardIds } from '../../contract/boxes/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { say } from '../../domain/say.ts'

/** A material that the caller named stays as it is. */
export function boardSaid(material: string): Said | string {
  const known = boardIds.find(id => id === material)
  return known === undefined ? material : say(`board-material.${known}`)
}
