/** What the form calls its fields and choices, in the language of the visitor. */
import { type Language, told } from '../../domain/say.ts'
import { coilChoices, type FrontField } from './front-fields.ts'

export const labelOf = ({ name }: FrontField, language: Language): string => told(language, `front.label.${name}`)

/** Where it stands on a sheet, or how to measure it. */
export const markOf = ({ name }: FrontField, language: Language): string => told(language, `front.mark.${name}`)

/** A choice in words; what is a word already stays. */
export function choiceOf({ name, choices }: FrontField, value: string, language: Language): string {
  if (choices === coilChoices) return `${value.replace('x', ' × ')} Ω`
  if (name === 'class') return told(language, 'front.choice.class', { name: value })
  return language.templates[`front.choice.${name}.${value}`] ?? (name === 'drivers' ? value : value.toUpperCase())
}
