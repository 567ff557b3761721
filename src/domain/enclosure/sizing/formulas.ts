/** The formulas of sizing as records. */
import { formula, symbol } from '../../formula.ts'
import { closedBoxVolumeM3 } from '../alignment/closed-box.ts'

const Vas = symbol('volume of equal compliance, all drivers', 'm³', 0.005, 0.5)
const fs = symbol('free-air resonance', 'Hz', 15, 120)
const Qtc = symbol('total Q in the box', '1', 0.5, 1.5)
const Qts = symbol('total Q of the drivers, source resistance in it', '1', 0.15, 0.45)
const worked = { Qtc: Math.SQRT1_2, Qts: 0.4128440367 }

export const closedVolume = formula({
  id: 'closed-box-volume',
  gives: 'net volume of a closed box of a wanted total Q',
  unit: 'm³',
  text: 'Vas/((Qtc/Qts)^2-1)',
  symbols: { Vas, Qtc, Qts },
  validity: 'small signals, lumped, lossless box; Qtc above Qts',
  source: 'small-1972-closed-box',
  checks: [{ given: { Vas: 0.06, ...worked }, gives: '0.0310305', from: 'worked by hand' }],
  of: given => closedBoxVolumeM3({ vasM3: given.Vas, qts: given.Qts }, given.Qtc)
})

export const closedResonanceByQ = formula({
  id: 'closed-box-resonance-by-q',
  gives: 'resonance in a closed box that brings the total Q to a wanted figure',
  unit: 'Hz',
  text: 'fs*Qtc/Qts',
  symbols: { fs, Qtc, Qts },
  validity: 'small signals, lumped, lossless box',
  source: 'small-1972-closed-box',
  checks: [{ given: { fs: 30, ...worked }, gives: '51.3831', from: 'worked by hand' }],
  of: given => (given.fs * given.Qtc) / given.Qts
})

export const volumeByAlpha = formula({
  id: 'volume-by-compliance-ratio',
  gives: 'net volume for a compliance ratio; the ratio comes from the alignment',
  unit: 'm³',
  text: 'Vas/alpha',
  symbols: { Vas, alpha: symbol('compliance ratio', '1', 0.1, 20) },
  validity: 'by definition of the ratio',
  source: 'small-1972-closed-box',
  checks: [{ given: { Vas: 0.06, alpha: 2 }, gives: '0.0300', from: 'worked by hand' }],
  of: given => given.Vas / given.alpha
})

export const tuningByRatio = formula({
  id: 'tuning-by-ratio',
  gives: 'tuning for a tuning ratio; the ratio comes from the alignment',
  unit: 'Hz',
  text: 'fs*h',
  symbols: { fs, h: symbol('tuning over free-air resonance', '1', 0.3, 4) },
  validity: 'by definition of the ratio',
  source: 'small-1973-vented-box',
  checks: [{ given: { fs: 30, h: 1.2 }, gives: '36.0', from: 'worked by hand' }],
  of: given => given.fs * given.h
})

export const sizingFormulas = [closedVolume, closedResonanceByQ, volumeByAlpha, tuningByRatio]
