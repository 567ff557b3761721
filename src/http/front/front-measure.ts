/** Sizes of the form as the visitor's rule shows them: millimetres and litres, or inches, feet and cubic feet, with fractions. */

import { figure } from '../../documents/draw/number-text.ts'
import { CUBIC_FOOT_M3, INCH_M } from '../../domain/constants.ts'
import { type Language, told } from '../../domain/say.ts'
import type { FrontField, FrontRule } from './front-fields.ts'
import { schemaOf, unitOf } from './front-schema.ts'

/** Of the contract's unit: what a rule in inches has in its place, and how much of the one is in the other. */
const inInches: Readonly<Record<string, { readonly unit: string; readonly per: number }>> = {
  mm: { unit: 'in', per: INCH_M * 1e3 },
  m: { unit: 'ft', per: 12 * INCH_M },
  L: { unit: 'ft³', per: CUBIC_FOOT_M3 * 1e3 }
}

const measureOf = (field: FrontField, rule: FrontRule) =>
  rule === 'inch' && field.inches !== undefined ? inInches[unitOf(field)] : undefined

/** The unit that stands in the frame of a field. */
export const shownUnit = (field: FrontField, rule: FrontRule): string => measureOf(field, rule)?.unit ?? unitOf(field)

export const shownExample = (field: FrontField, rule: FrontRule): string =>
  measureOf(field, rule) === undefined ? field.example : (field.inches ?? '')

/** Comma or point; anything else is refused, a unit too: it may be another one. */
const decimal = /^-?\d+(?:[.,]\d+)?$/
/** `38 1/2`, `38-1/2`, `23/32`. */
const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/

/** Inches come with fractions. @returns undefined where it is no number */
function amountOf(text: string, fractions: boolean): number | undefined {
  if (decimal.test(text)) return Number(text.replace(',', '.'))
  const [, whole = '0', top, bottom] = mixed.exec(text) ?? []
  if (!fractions || top === undefined || Number(bottom) === 0) return undefined
  return Number(whole) + Number(top) / Number(bottom)
}

/** In the contract's unit, to a thousandth of it. @returns undefined where it is no number */
export function measured(field: FrontField, text: string, rule: FrontRule): number | undefined {
  const measure = measureOf(field, rule)
  const amount = amountOf(text, measure !== undefined)
  return amount === undefined || measure === undefined ? amount : Number((amount * measure.per).toFixed(3))
}

/** What the contract would say in its own unit. */
export function beyondBounds(
  field: FrontField,
  value: number,
  rule: FrontRule,
  language: Language
): string | undefined {
  const measure = measureOf(field, rule)
  const { minimum = Number.NEGATIVE_INFINITY, maximum = Number.POSITIVE_INFINITY } = schemaOf(field)
  if (measure === undefined || (value >= minimum && value <= maximum)) return undefined
  const limit = figure((value < minimum ? minimum : maximum) / measure.per, 2, { language })
  const said = { limit, unit: measure.unit }
  return value < minimum ? told(language, 'front.fault.least', said) : told(language, 'front.fault.most', said)
}
