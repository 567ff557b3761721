/** The formula of a cut plan as a record. */
import { formula, symbol } from '../formula.ts'

export const sheetYield = formula({
  id: 'sheet-yield',
  gives: 'share of the sheets that the panels fill',
  unit: '%',
  text: '100*A_panels/A_sheets',
  symbols: {
    A_panels: symbol('area of all panels', 'm²', 0.1, 10),
    A_sheets: symbol('area of the sheets used', 'm²', 0.5, 20)
  },
  validity: 'by definition',
  source: 'sheet-area-bound',
  checks: [{ given: { A_panels: 1.8, A_sheets: 2.4 }, gives: '75.00', from: 'worked by hand' }],
  of: given => (100 * given.A_panels) / given.A_sheets
})

export const sheetFormulas = [sheetYield]
