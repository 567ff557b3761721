/** The formulas of supply currents as records. */
import { formula, symbol } from '../../formula.ts'
import { rippleOf } from './amplifier-currents.ts'

const I = symbol('mean current', 'A', 1, 400)

export const currentOfPower = formula({
  id: 'current-of-power',
  gives: 'current of an input power',
  unit: 'A',
  text: 'Pin/V',
  symbols: { Pin: symbol('power drawn by all amplifiers', 'W', 10, 6000), V: symbol('supply voltage', 'V', 9, 60) },
  validity: 'at the voltage stated; a lower one draws more',
  source: 'class-efficiency',
  checks: [{ given: { Pin: 690, V: 13.8 }, gives: '50.00', from: 'worked by hand' }],
  of: given => given.Pin / given.V
})

export const peakCurrent = formula({
  id: 'peak-current-without-storage',
  gives: 'peak of the current of a sine output when nothing stores charge',
  unit: 'A',
  text: '2*I',
  symbols: { I },
  validity: 'sine output, a bridge, no storage before the amplifier',
  source: 'class-b-theory',
  checks: [{ given: { I: 50 }, gives: '100.0', from: 'sine squared: its peak is twice its mean' }],
  of: given => rippleOf(given.I).peakNoStorageA
})

export const idleSurplus = formula({
  id: 'idle-surplus',
  gives: 'what the alternator has left at idle',
  unit: 'A',
  text: 'Iav-Ibase-Imusic',
  symbols: {
    Iav: symbol('current of the alternator at idle, hot', 'A', 10, 200),
    Ibase: symbol('current of the car itself', 'A', 5, 80),
    Imusic: symbol('mean current of the amplifiers', 'A', 1, 200)
  },
  validity: 'mean currents; a battery bridges what is shorter',
  source: 'iso-8854',
  checks: [{ given: { Iav: 50, Ibase: 30, Imusic: 12.5 }, gives: '7.50', from: 'worked by hand' }],
  of: given => given.Iav - given.Ibase - given.Imusic
})

export const currentFormulas = [currentOfPower, peakCurrent, idleSurplus]
