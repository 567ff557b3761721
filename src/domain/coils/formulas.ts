/** The formulas of coils and their cable as records. */
import { formula, symbol, wholeSymbol } from '../formula.ts'
import { cableLossDb } from './cable-effects.ts'

const load = symbol('load', 'Ω', 0.25, 16)
const loop = symbol('resistance of the cable, out and back', 'Ω', 0, 0.5)
const n = wholeSymbol('coils', 1, 16)

export const wiredLoad = formula({
  id: 'wired-load',
  gives: 'load of equal coils in equal strings side by side',
  unit: 'Ω',
  text: 'Zc*s*s/n',
  symbols: { Zc: symbol('impedance of one coil', 'Ω', 0.5, 16), s: wholeSymbol('coils in series', 1, 4), n },
  validity: 'coils all alike, the number of coils a multiple of those in series',
  source: 'kirchhoff-networks',
  checks: [
    { given: { Zc: 4, s: 2, n: 4 }, gives: '4.000', from: 'worked by hand' },
    { given: { Zc: 2, s: 1, n: 4 }, gives: '0.500', from: 'worked by hand' }
  ],
  of: ({ Zc, s, n: count }) => (Zc * s * s) / count
})

export const coilPower = formula({
  id: 'coil-power',
  gives: 'power in each of equal coils that share evenly',
  unit: 'W',
  text: 'P/n',
  symbols: { P: symbol('power in all coils', 'W', 1, 5000), n },
  validity: 'coils all alike, each with the same share',
  source: 'kirchhoff-networks',
  checks: [{ given: { P: 600, n: 4 }, gives: '150.0', from: 'worked by hand' }],
  of: ({ P, n: count }) => P / count
})

export const cableLoss = formula({
  id: 'speaker-cable-loss',
  gives: 'level lost in the loudspeaker cable',
  unit: 'dB',
  text: '20*log10(Z/(Z+Rw))',
  symbols: { Z: load, Rw: loop },
  validity: 'the load as a resistance',
  source: 'kirchhoff-networks',
  checks: [{ given: { Z: 1, Rw: 0.0806 }, gives: '-0.6733', from: 'worked by hand' }],
  of: ({ Z, Rw }) => cableLossDb(Z, Rw)
})

export const cableShare = formula({
  id: 'speaker-cable-share',
  gives: 'resistance of the loudspeaker cable as a share of the load',
  unit: '%',
  text: '100*Rw/Z',
  symbols: { Z: load, Rw: loop },
  validity: 'by definition',
  source: 'speaker-cable-practice',
  checks: [{ given: { Z: 4, Rw: 0.2 }, gives: '5.00', from: 'worked by hand' }],
  of: ({ Z, Rw }) => (100 * Rw) / Z
})

export const coilFormulas = [wiredLoad, coilPower, cableLoss, cableShare]
