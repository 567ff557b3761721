/** What is tried to mend a supply, and what counts as mended. */
import type { DefaultTable } from '../../domain/default.ts'

export const remedyDefaults = {
  goodBodyOhm: {
    value: 0.0006,
    unit: 'Ω',
    why: 'a welded steel body between ground point and post, measured well',
    source: 'practice'
  },
  usualClassC: {
    value: 105,
    unit: '°C',
    why: 'the class that power cable for cars is mostly printed with',
    source: 'practice'
  },
  hotClassC: {
    value: 125,
    unit: '°C',
    why: 'the next one that is sold, cross-linked; the last column but one of 33 CFR 183.425 Table 5 (read)',
    source: 'practice'
  },
  mostRuns: { value: 4, unit: '1', why: 'as many as a block takes in', source: 'ours' },
  stiffM2: {
    value: 50e-6,
    unit: 'm²',
    why: 'from 1/0 AWG on one cable is stiff, and two thinner ones are laid instead',
    source: 'practice'
  },
  overLimit: {
    value: 1.0005,
    unit: '1',
    why: 'a limit lies a hair above what is asked, so that rounding does not undo it',
    source: 'ours'
  },
  underLoss: {
    value: 0.99,
    unit: '1',
    why: 'a limit just below what the chosen size takes asks for the next one',
    source: 'ours'
  },
  leastLossPercent: {
    value: 0.2,
    unit: '%',
    why: 'a cable that takes less is not asked to be thicker',
    source: 'ours'
  },
  secondAh: {
    value: 70,
    unit: 'A·h',
    why: 'what a second battery holds where the first says nothing',
    source: 'practice'
  },
  nextAlternator: {
    value: 1.4,
    unit: '1',
    why: 'the next alternator of a vehicle over the one that is in it',
    source: 'practice'
  },
  alternatorStepA: { value: 10, unit: 'A', why: 'alternators are told in whole tens', source: 'practice' },
  mostAlternatorA: { value: 1000, unit: 'A', why: 'the largest that a request takes', source: 'derived' },
  turnDownDb: { value: 2, unit: 'dB', why: 'a turn of the gain that is hardly heard', source: 'practice' },
  coilsOhm: { value: [1, 2, 4], unit: 'Ω', why: 'rated impedances that coils are sold with', source: 'practice' },
  worthV: {
    value: 0.05,
    unit: 'V',
    why: 'less is within what a battery’s charge changes from day to day',
    source: 'ours'
  },
  samePowerShare: { value: 0.01, unit: '1', why: 'powers that differ by less are one', source: 'ours' },
  lessPower: { value: 0.99, unit: '1', why: 'less of it is a price: the change then has to cure', source: 'ours' },
  thinner: { value: 0.99, unit: '1', why: 'a section below this share of the one before is thinner', source: 'ours' },
  stronger: { value: 1.1, unit: '1', why: 'a tenth more power is worth a change', source: 'ours' }
} as const satisfies DefaultTable
