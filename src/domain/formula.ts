/** A formula that stands behind figures, as one record: the function, its text, its symbols, where it holds, what it rests on. */

import type { Basis } from '../contract/field/envelope.ts'
import type { SourceId } from '../contract/sources/source.ts'

/** The SI units of formulas, written one way; temperatures in °C, ratios in % and dB as the trade does. */
export type FormulaUnit =
  | '1'
  | '%'
  | '1/K'
  | 'A'
  | 'dB'
  | 'Hz'
  | 'K/W'
  | 'kg'
  | 'kg/m²'
  | 'kg/m³'
  | 'kg/s'
  | 'm'
  | 'm/N'
  | 'm/s'
  | 'm²'
  | 'm³'
  | 'm³/s'
  | 'N·m'
  | 'Pa'
  | 'T·m'
  | 'V'
  | 'W'
  | '°C'
  | 'Ω'
  | 'Ω/m'

export interface FormulaSymbol {
  readonly means: string
  readonly unit: FormulaUnit
  /** Over this range text and function are compared; it lies within the validity. */
  readonly from: number
  readonly to: number
  readonly whole?: true
}

interface FormulaCheck<Symbols extends string> {
  readonly given: Readonly<Record<Symbols, number>>
  /** In the digits that hold: half a unit of the last is the tolerance. */
  readonly gives: string
  /** Where the figure comes from. */
  readonly from: string
}

export interface Formula<Symbols extends string = string> {
  readonly id: string
  /** What it works out, in words. */
  readonly gives: string
  readonly unit: FormulaUnit
  /** Plain arithmetic over the symbols: + - * / ^ sqrt() log10() log() pi min() max(). */
  readonly text: string
  readonly symbols: Readonly<Record<Symbols, FormulaSymbol>>
  readonly validity: string
  readonly source: SourceId
  readonly checks: readonly FormulaCheck<NoInfer<Symbols>>[]
  /** The function the rooms compute with. */
  readonly of: (given: Readonly<Record<NoInfer<Symbols>, number>>) => number
}

/** Fixes the symbols of a record, so that checks, function and use name exactly these. */
export const formula = <const Symbols extends string>(record: Formula<Symbols>): Formula<Symbols> => record

export const symbol = (means: string, unit: FormulaUnit, from: number, to: number): FormulaSymbol => ({
  means,
  unit,
  from,
  to
})

export const wholeSymbol = (means: string, from: number, to: number): FormulaSymbol => ({
  ...symbol(means, '1', from, to),
  whole: true
})

/** How a figure of a result was reached: the record, fed with what it was fed with. */
export function explain<Symbols extends string>(
  { id, text, symbols, unit, source }: Formula<Symbols>,
  quantity: string,
  value: number,
  given: Readonly<Record<NoInfer<Symbols>, number>>
): Basis {
  const names = Object.keys(symbols) as Symbols[]
  return {
    quantity,
    formulaId: id,
    formula: text,
    inputs: names.map(name => ({ symbol: name, value: given[name], unit: symbols[name].unit })),
    value,
    unit,
    source
  }
}
