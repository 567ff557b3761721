/** The formulas of a system at work as records. */
import { formula, symbol, wholeSymbol } from '../../formula.ts'
import { steadyCoilC, warmRatio } from './coil-heating.ts'

const coldOhm = symbol('resistance of the drivers at 20 °C', 'Ω', 0.5, 12)
const warmC = symbol('temperature of the coil', '°C', -20, 300)

export const drivePower = formula({
  id: 'drive-power',
  gives: 'power of a voltage in the resistance of the drivers',
  unit: 'W',
  text: 'V^2/Re',
  symbols: { V: symbol('voltage at the drivers', 'V', 1, 150), Re: coldOhm },
  validity: 'a figure to compare drives by: the impedance is higher than Re almost everywhere',
  source: 'linear-limits',
  checks: [{ given: { V: 40, Re: 3.2 }, gives: '500', from: 'worked by hand' }],
  of: ({ V, Re }) => V ** 2 / Re
})

export const steadyCoil = formula({
  id: 'steady-coil-temperature',
  gives: 'temperature at which a coil gives off the heat it gets; above 1000 °C the model stops',
  unit: '°C',
  text: 'min(Tamb+(Rcoil+Rmagnet)*P,1000)',
  symbols: {
    Tamb: symbol('temperature of the air', '°C', -20, 60),
    Rcoil: symbol('thermal resistance from coil to magnet', 'K/W', 0.1, 3),
    Rmagnet: symbol('thermal resistance from magnet to air', 'K/W', 0, 2),
    P: symbol('heat in one coil once it is warm', 'W', 1, 1000)
  },
  validity: 'steady heat; the heat itself depends on the temperature, so this holds at the end, not on the way',
  source: 'coil-heat-path',
  checks: [{ given: { Tamb: 25, Rcoil: 1.2, Rmagnet: 0.3, P: 100 }, gives: '175.0', from: 'worked by hand' }],
  of: ({ Tamb, Rcoil, Rmagnet, P }) =>
    steadyCoilC(() => P, { coilKPerW: Rcoil, magnetKPerW: Rmagnet, coilTimeConstantS: 1, magnetTimeConstantS: 1 }, Tamb)
})

export const warmResistance = formula({
  id: 'warm-resistance',
  gives: 'resistance of warm coils',
  unit: 'Ω',
  text: 'Rcold*(1+a*(T-20))',
  symbols: {
    Rcold: coldOhm,
    a: symbol('temperature coefficient of the metal at 20 °C', '1/K', 0.0039, 0.0041),
    T: warmC
  },
  validity: '-50 to 300 °C',
  source: 'iec-60028',
  checks: [{ given: { Rcold: 3.2, a: 0.00393, T: 200 }, gives: '5.46368', from: 'worked by hand' }],
  of: ({ Rcold, a, T }) => Rcold * warmRatio(a, T)
})

export const heatCompression = formula({
  id: 'heat-compression',
  gives: 'level lost in the mass-controlled band by warm coils',
  unit: 'dB',
  text: '20*log10((Rhot+Rg)/(Rcold+Rg))',
  symbols: {
    Rhot: symbol('resistance of the drivers once warm', 'Ω', 0.5, 20),
    Rcold: coldOhm,
    Rg: symbol('resistance before the drivers', 'Ω', 0, 1)
  },
  validity: 'mass-controlled band, where the current follows the resistance',
  source: 'linear-limits',
  checks: [{ given: { Rhot: 6.4, Rcold: 3.2, Rg: 0 }, gives: '6.0206', from: 'worked by hand' }],
  of: ({ Rhot, Rcold, Rg }) => 20 * Math.log10((Rhot + Rg) / (Rcold + Rg))
})

export const highPassLevel = formula({
  id: 'butterworth-high-pass-level',
  gives: 'level of a Butterworth high-pass at a frequency',
  unit: 'dB',
  text: '-10*log10(1+(fh/fb)^(2*n))',
  symbols: {
    fh: symbol('corner of the high-pass', 'Hz', 5, 200),
    fb: symbol('frequency', 'Hz', 5, 200),
    n: wholeSymbol('order', 1, 4)
  },
  validity: 'the ideal filter',
  source: 'butterworth-1930',
  checks: [
    { given: { fh: 30, fb: 30, n: 4 }, gives: '-3.0103', from: 'half power at the corner' },
    { given: { fh: 40, fb: 20, n: 2 }, gives: '-12.3045', from: 'worked by hand' }
  ],
  of: ({ fh, fb, n }) => 20 * Math.log10(highPassGain(n, fh, fb))
})

/** Gain of a Butterworth high-pass, |H| = 1/√(1 + (f_h/f)²ⁿ) (Butterworth 1930, from memory). */
function highPassGain(order: number, cornerHz: number, frequencyHz: number): number {
  return 1 / Math.sqrt(1 + (cornerHz / frequencyHz) ** (2 * order))
}

export const limitFormulas = [drivePower, steadyCoil, warmResistance, heatCompression, highPassLevel]
