/** The formulas of a cable's drop as records. */
import { formula, symbol } from '../../formula.ts'

export const conductorDrop = formula({
  id: 'conductor-drop',
  gives: 'voltage lost in a conductor and its contacts',
  unit: 'V',
  text: 'I*(r*L+Rc)',
  symbols: {
    I: symbol('current', 'A', 1, 400),
    r: symbol('resistance of a metre of conductor', 'Ω/m', 1e-4, 0.02),
    L: symbol('length of conductor, out and back', 'm', 0.2, 20),
    Rc: symbol('resistance of the contacts', 'Ω', 0, 0.005)
  },
  validity: 'steady direct current',
  source: 'ohms-law',
  checks: [{ given: { I: 100, r: 0.0008, L: 5, Rc: 0.001 }, gives: '0.5000', from: 'worked by hand' }],
  of: ({ I, r, L, Rc }) => I * (r * L + Rc)
})

export const dropShare = formula({
  id: 'drop-share',
  gives: 'voltage lost as a share of the nominal voltage',
  unit: '%',
  text: '100*dV/V',
  symbols: { dV: symbol('voltage lost', 'V', 0, 5), V: symbol('nominal voltage', 'V', 6, 60) },
  validity: 'by definition',
  source: 'ohms-law',
  checks: [{ given: { dV: 0.36, V: 12 }, gives: '3.000', from: 'worked by hand' }],
  of: ({ dV, V }) => (100 * dV) / V
})

export const cableFormulas = [conductorDrop, dropShare]
