/** The formulas of amplifiers and their gain as records. */
import { formula, symbol, wholeSymbol } from '../formula.ts'

const Z = symbol('load', 'Ω', 0.25, 16)
const Pa = symbol('power of one output', 'W', 20, 5000)
const N = wholeSymbol('drivers on one output', 1, 8)
const Pd = symbol('rated power of one driver', 'W', 20, 3000)
const resistive = 'the load as a resistance: right at the impedance minimum, elsewhere the power is lower'

export const targetVoltage = formula({
  id: 'target-voltage',
  gives: 'voltage of a power in a load',
  unit: 'V',
  text: 'sqrt(P*Z)',
  symbols: { P: symbol('power', 'W', 1, 5000), Z },
  validity: resistive,
  source: 'ohms-law',
  checks: [
    { given: { P: 500, Z: 4 }, gives: '44.7214', from: 'worked by hand' },
    { given: { P: 300, Z: 2 }, gives: '24.4949', from: 'worked by hand' }
  ],
  of: given => Math.sqrt(given.P * given.Z)
})

export const matchedVoltage = formula({
  id: 'matched-target-voltage',
  gives: 'voltage at which the output or the drivers end, whichever ends first',
  unit: 'V',
  text: 'sqrt(min(Pa,N*Pd)*Z)',
  symbols: { Pa, N, Pd, Z },
  validity: resistive,
  source: 'ohms-law',
  checks: [
    { given: { Pa: 600, N: 2, Pd: 250, Z: 2 }, gives: '31.6228', from: 'worked by hand' },
    { given: { Pa: 400, N: 2, Pd: 250, Z: 4 }, gives: '40.000', from: 'worked by hand' }
  ],
  of: given => targetVoltage.of({ P: Math.min(given.Pa, given.N * given.Pd), Z: given.Z })
})

export const powerRatio = formula({
  id: 'power-ratio',
  gives: 'power of an output over what its drivers are rated for',
  unit: '1',
  text: 'Pa/(N*Pd)',
  symbols: { Pa, N, Pd },
  validity: 'both powers continuous RMS',
  source: 'equal-power-practice',
  checks: [{ given: { Pa: 600, N: 2, Pd: 250 }, gives: '1.200', from: 'worked by hand' }],
  of: given => given.Pa / given.N / given.Pd
})

export const powerAtSameVoltage = formula({
  id: 'power-at-same-voltage',
  gives: 'power that the voltage of a rating gives at a higher load; a lower bound',
  unit: 'W',
  text: 'Pr*Zr/Z',
  symbols: { Pr: symbol('rated power', 'W', 20, 5000), Zr: symbol('rated load', 'Ω', 0.25, 8), Z },
  validity: 'loads above the rated one only',
  source: 'ohms-law',
  checks: [{ given: { Pr: 600, Zr: 4, Z: 8 }, gives: '300.0', from: 'worked by hand' }],
  of: given => (given.Pr * given.Zr) / given.Z
})

export const amplifierFormulas = [targetVoltage, matchedVoltage, powerRatio, powerAtSameVoltage]
