/** The formulas of the search's score as records. */
import { formula, symbol } from '../../domain/formula.ts'
import { pointsOf, type ScoredFigures, type Weights } from './search-score.ts'

const weight = (means: string) => symbol(`weight of ${means}`, '1', 0, 3)

const figures = {
  L: symbol('level', 'dB', 80, 130),
  f: symbol('half power', 'Hz', 15, 80),
  V: symbol('outer volume', 'm³', 0.01, 0.5),
  I: symbol('current at full sine', 'A', 1, 300)
}
const weights = { wL: weight('level'), wR: weight('reach'), wB: weight('box'), wC: weight('current') }

const figuresOf = ({ L, f, V, I }: Readonly<Record<keyof typeof figures, number>>): ScoredFigures => ({
  levelDb: L,
  f3Hz: f,
  outerVolumeM3: V,
  fullSineA: I
})

const weightsOf = ({ wL, wR, wB, wC }: Readonly<Record<keyof typeof weights, number>>, price = 0): Weights => ({
  level: wL,
  reach: wR,
  box: wB,
  current: wC,
  price
})

const evenWeights = { wL: 1, wR: 1, wB: 1, wC: 1 }
const zero = { L: 100, f: 30, V: 0.1, I: 50, ...evenWeights }

export const designScore = formula({
  id: 'design-score',
  gives: 'score of a design without a price',
  unit: 'dB',
  text: 'wL*L-wR*30*log10(f/30)-wB*10*log10(V/0.1)-wC*10*log10(I/50)',
  symbols: { ...figures, ...weights },
  validity: 'an order of preference, no physics of the single design',
  source: 'design-score',
  checks: [
    { given: zero, gives: '100.00', from: 'every term but the level is zero there' },
    { given: { ...zero, f: 60 }, gives: '90.969', from: 'worked by hand: 9.03 dB an octave' }
  ],
  of: given => pointsOf(figuresOf(given), weightsOf(given)).total
})

export const pricedDesignScore = formula({
  id: 'design-score-with-price',
  gives: 'score of a design with a price',
  unit: 'dB',
  text: 'wL*L-wR*30*log10(f/30)-wB*10*log10(V/0.1)-wC*10*log10(I/50)-wP*10*log10(P/1000)',
  symbols: {
    L: figures.L,
    f: figures.f,
    V: figures.V,
    I: figures.I,
    P: symbol('price, nothing below one unit of the currency', '1', 1, 10_000),
    ...weights,
    wP: weight('price')
  },
  validity: 'an order of preference, no physics of the single design',
  source: 'design-score',
  checks: [
    { given: { ...zero, P: 2000, wP: 1 }, gives: '96.9897', from: 'worked by hand: 3.01 dB for twice the price' }
  ],
  of: given => pointsOf({ ...figuresOf(given), price: given.P }, weightsOf(given, given.wP)).total
})

export const scoreFormulas = [designScore, pricedDesignScore]
