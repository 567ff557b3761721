/** The formula of a box's volume as a record. */
import { formula, symbol } from '../../formula.ts'

export const volumeBalance = formula({
  id: 'volume-balance',
  gives: 'air left in a box',
  unit: 'm³',
  text: 'Vgross-Vtaken',
  symbols: {
    Vgross: symbol('volume inside the boards', 'm³', 0.01, 0.5),
    Vtaken: symbol('what everything inside takes', 'm³', 0, 0.05)
  },
  validity: 'bodies that do not overlap',
  source: 'box-geometry',
  checks: [{ given: { Vgross: 0.06, Vtaken: 0.0075 }, gives: '0.05250', from: 'worked by hand' }],
  of: given => given.Vgross - given.Vtaken
})

export const boxLayoutFormulas = [volumeBalance]
