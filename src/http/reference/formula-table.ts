/** GET /v1/reference/formulas */
import Type from 'typebox'
import { component, ref } from '../../contract/field/component.ts'
import { choice, label, list } from '../../contract/field/quantities.ts'
import { sourceIds } from '../../contract/sources/source.ts'
import { formulas } from '../../plan/formulas.ts'

const SymbolRow = component('FormulaSymbol', 'A symbol of a formula.', {
  symbol: label('As it stands in the text'),
  means: label('What it stands for', 200),
  unit: label('Its SI unit; temperatures in °C'),
  from: Type.Number({ description: 'Lower end of the range over which text and code are compared' }),
  to: Type.Number({ description: 'Upper end of that range' })
})

const GivenRow = component('FormulaGiven', 'A symbol with a value.', {
  symbol: label('As it stands in the text'),
  value: Type.Number({ description: 'In the unit of the symbol' })
})

const CheckRow = component('FormulaCheck', 'A figure the formula must give.', {
  given: list('What it is fed with', ref(GivenRow), 1, 20),
  gives: label('In the digits that hold'),
  from: label('Where the figure comes from', 200)
})

export const formulaTable = {
  name: 'formulas',
  summary: 'Formulas behind the figures',
  description:
    'Every formula that the basis of an answer can name. Tests evaluate each text over the ranges of its symbols and compare it with the function the answers come from.',
  row: component('FormulaRow', 'A formula that stands behind figures.', {
    id: label('Id, as in `basis` of an answer'),
    gives: label('What it works out', 200),
    unit: label('SI unit of what it gives; temperatures in °C'),
    text: label('Plain arithmetic: + - * / ^ sqrt() log10() log() pi min() max()', 300),
    symbols: list('In the order of the inputs of a basis', ref(SymbolRow), 1, 20),
    validity: label('Where it holds', 300),
    source: choice('Id of the source', sourceIds),
    checks: list('Figures it must give', ref(CheckRow), 1, 10)
  }),
  rows: formulas.map(({ id, gives, unit, text, symbols, validity, source, checks }) => ({
    id,
    gives,
    unit,
    text,
    symbols: Object.entries(symbols).map(([symbol, { means, unit, from, to }]) => ({ symbol, means, unit, from, to })),
    validity,
    source,
    checks: checks.map(check => ({
      given: Object.entries(check.given).map(([symbol, value]) => ({ symbol, value })),
      gives: check.gives,
      from: check.from
    }))
  })),
  sources: [...new Set(formulas.map(({ source }) => source))]
}
