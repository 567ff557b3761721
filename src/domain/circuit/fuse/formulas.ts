/** The formulas of fuses and of what they protect as records. */
import { formula, symbol } from '../../formula.ts'
import { thermalRating } from './fuse-rating.ts'

export const cableAmpacity = formula({
  id: 'cable-ampacity',
  gives: 'current a cable carries for good in its surroundings',
  unit: 'A',
  text: 'I30*Fa*Fb*Fm',
  symbols: {
    I30: symbol('ampacity by the table at 30 °C', 'A', 3, 500),
    Fa: symbol('factor of the ambient temperature', '1', 0.2, 1.2),
    Fb: symbol('factor of conductors bundled', '1', 0.5, 1),
    Fm: symbol('factor of the metal', '1', 0.5, 1)
  },
  validity: 'sizes and insulation classes of the table; the factors as the answer gives them',
  source: '33-cfr-183-425',
  checks: [{ given: { I30: 160, Fa: 0.85, Fb: 0.7, Fm: 1 }, gives: '95.20', from: 'worked by hand' }],
  of: ({ I30, Fa, Fb, Fm }) => I30 * Fa * Fb * Fm
})

export const thermalFuse = formula({
  id: 'fuse-thermal-rating',
  gives: 'smallest rating that the heating of a fuse allows',
  unit: 'A',
  text: 'I/(ratio*F)',
  symbols: {
    I: symbol('heavy current', 'A', 1, 400),
    ratio: symbol('continuous load over rating', '1', 0.5, 1),
    F: symbol('factor of the temperature at the fuse', '1', 0.5, 1)
  },
  validity: 'loads that last minutes',
  source: 'fuse-load-ratio',
  checks: [{ given: { I: 20, ratio: 0.75, F: 0.85 }, gives: '31.373', from: 'worked by hand' }],
  of: ({ I, ratio, F }) => thermalRating(I, ratio, F)
})

export const fuseFormulas = [cableAmpacity, thermalFuse]
