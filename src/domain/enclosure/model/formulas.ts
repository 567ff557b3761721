/** The formulas of chambers as records. */
import { formula, symbol } from '../../formula.ts'

export const radiatorTuning = formula({
  id: 'passive-radiator-tuning',
  gives: 'tuning of a volume with passive radiators',
  unit: 'Hz',
  text: 'fp*sqrt(1+Vap/V)',
  symbols: {
    fp: symbol('resonance of one radiator in free air', 'Hz', 5, 60),
    Vap: symbol('volume of air as compliant as all radiators', 'm³', 0.01, 1),
    V: symbol('net volume', 'm³', 0.005, 0.5)
  },
  validity: 'lumped; the radiators all alike',
  source: 'small-1974-passive-radiator',
  checks: [{ given: { fp: 18, Vap: 0.1, V: 0.04 }, gives: '33.675', from: 'worked by hand' }],
  of: ({ fp, Vap, V }) => fp * Math.sqrt(1 + Vap / V)
})

export const modelFormulas = [radiatorTuning]
