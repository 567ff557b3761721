/** The formula of a feeder's branch as a record. */
import { formula, symbol } from '../../formula.ts'

export const branchVoltage = formula({
  id: 'branch-voltage',
  gives: 'voltage at an amplifier behind its branch',
  unit: 'V',
  text: 'Vblock-I*R',
  symbols: {
    Vblock: symbol('voltage at the block', 'V', 9, 60),
    I: symbol('current of the amplifier at this voltage', 'A', 1, 400),
    R: symbol('resistance of the branch, out and back', 'Ω', 0, 0.02)
  },
  validity: 'the equation that the solved feeder satisfies: the current itself depends on the voltage',
  source: 'constant-power-feeder',
  checks: [{ given: { Vblock: 13.2, I: 80, R: 0.005 }, gives: '12.800', from: 'worked by hand' }],
  of: ({ Vblock, I, R }) => Vblock - I * R
})

export const feederFormulas = [branchVoltage]
