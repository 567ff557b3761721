/** What a board is made of, from the word by which a request names it. */
import { boardIds } from '../../contract/boxes/words.ts'
import type { Said } from '../../contract/sentences/form/template.ts'
import { say } from '../../domain/say.ts'

/** A material that the caller named stays as it is. */
export function boardSaid(material: string): Said | string {
  const known = boardIds.find(id => id === material)
  return known === undefined ? material : say(`board-material.${known}`)
}

/** A sheet that bears the name the plan gives it, thickness and material, is said so; one that the caller named is not. */
export function sheetSaid(name: string): Said | string {
  const [, thickness, material] = /^([\d.]+ mm) (\S+)$/.exec(name) ?? []
  if (thickness === undefined || material === undefined) return name
  return say('bill.board-of', { thickness, material: boardSaid(material) })
}
