/** The formulas of the signal chain as records. */
import { meterVoltage, voltageGainDb } from '../amplifier/gain-target.ts'
import { formula, symbol } from '../formula.ts'
import { converterDb, loadingDb } from './source-level.ts'

const Vin = symbol('level at the input', 'V', 0.05, 10)

export const meterReading = formula({
  id: 'meter-voltage',
  gives: 'meter reading at which to leave the gain, never above the target',
  unit: 'V',
  text: 'min(V,V*10^((L-b+o)/20))',
  symbols: {
    V: symbol('target voltage', 'V', 1, 150),
    L: symbol('level of the test tone below full scale', 'dB', -24, 0),
    b: symbol('boost at the frequency of the tone', 'dB', 0, 12),
    o: symbol('allowance for quiet recordings', 'dB', 0, 12)
  },
  validity: 'a sine as test tone, filters and boost set',
  source: 'gain-practice',
  checks: [
    { given: { V: 40, L: -12, b: 0, o: 4 }, gives: '15.924', from: 'worked by hand' },
    { given: { V: 40, L: 0, b: 0, o: 6 }, gives: '40.000', from: 'never above the target' }
  ],
  of: ({ V, L, b, o }) => meterVoltage(V, L - b, o)
})

export const loadingLoss = formula({
  id: 'loading-loss',
  gives: 'level lost when an output resistance drives an input',
  unit: 'dB',
  text: '20*log10(Zin/(Zin+Zout))',
  symbols: {
    Zin: symbol('resistance of the input', 'Ω', 50, 100_000),
    Zout: symbol('resistance of the output', 'Ω', 0, 10_000)
  },
  validity: 'both as resistances',
  source: 'ohms-law',
  checks: [{ given: { Zin: 10_000, Zout: 600 }, gives: '-0.50612', from: 'worked by hand' }],
  of: ({ Zin, Zout }) => loadingDb(Zout, Zin)
})

export const converterRatio = formula({
  id: 'converter-ratio',
  gives: 'ratio of a line-output converter',
  unit: 'dB',
  text: '20*log10(Vin/Vs)',
  symbols: { Vin, Vs: symbol('level of the loudspeaker output', 'V', 0.5, 50) },
  validity: 'by definition of the decibel',
  source: 'ohms-law',
  checks: [{ given: { Vin: 2, Vs: 8.94427 }, gives: '-13.0103', from: 'worked by hand' }],
  of: given => converterDb(given.Vs, given.Vin)
})

export const voltageGain = formula({
  id: 'voltage-gain',
  gives: 'gain from input to loudspeaker terminals',
  unit: 'dB',
  text: '20*log10(V/Vin)',
  symbols: { V: symbol('target voltage', 'V', 1, 150), Vin },
  validity: 'by definition of the decibel',
  source: 'ohms-law',
  checks: [{ given: { V: 40, Vin: 2 }, gives: '26.0206', from: 'worked by hand' }],
  of: given => voltageGainDb(given.V, given.Vin)
})

export const signalFormulas = [meterReading, loadingLoss, converterRatio, voltageGain]
