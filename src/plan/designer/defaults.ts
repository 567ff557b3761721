/** How systems are put in order where the caller does not say. */
import type { DefaultTable } from '../../domain/default.ts'

export const rankDefaults = {
  driverCounts: { value: [1, 2], unit: '1', why: 'one driver and a pair', source: 'ours' },
  kinds: { why: 'the kinds a plan builds', source: 'derived' },
  rankBy: { value: 'balance', unit: 'word', why: 'level, reach, box, price and current', source: 'ours' },
  weight: { value: 1, unit: '1', why: 'what each figure counts, in decibels of equal worth', source: 'ours' },
  levelWeight: { why: 'a decibel of level counts one', source: 'ours' },
  reachWeight: {
    why: 'an octave of f3 counts nine decibels, as efficiency goes with its third power',
    source: 'small-1972-closed-box'
  },
  boxWeight: {
    why: 'half the box counts three decibels, as efficiency goes with volume',
    source: 'small-1972-closed-box'
  },
  priceWeight: { why: 'half the price counts three decibels, as half the power', source: 'ours' },
  currentWeight: { why: 'half the current counts three decibels, as half the power', source: 'ours' },
  unpriced: { why: 'a price is missing, so none counts', source: 'ours' },
  zeroF3Hz: { value: 30, unit: 'Hz', why: 'here reach gives no points; moves all designs alike', source: 'ours' },
  zeroOuterVolumeM3: { value: 0.1, unit: 'm³', why: 'here the box gives no points', source: 'ours' },
  zeroPrice: { value: 1000, unit: '1', why: 'here the price gives no points', source: 'ours' },
  zeroFullSineA: { value: 50, unit: 'A', why: 'here the current gives no points', source: 'ours' },
  leastPrice: {
    value: 1,
    unit: '1',
    why: 'parts at hand cost nothing; below one unit of any currency two systems cost the same',
    source: 'ours'
  },
  leastCurrentA: { value: 1e-3, unit: 'A', why: 'below a milliampere nothing is drawn', source: 'ours' },
  levelHz: {
    value: 40,
    unit: 'Hz',
    why: 'where the weight of a bass line lies (common practice, no source)',
    source: 'practice'
  },
  show: { value: 10, unit: '1', why: 'the first ten of each list', source: 'ours' },
  excursionOfXmax: { value: 1, unit: '1', why: 'no cone is driven beyond its rated excursion', source: 'derived' },
  goal: { why: 'the boxes that serve what decides the order', source: 'ours' },
  dbShare: {
    value: 10 ** (1 / 20) - 1,
    unit: '1',
    why: 'a level is a logarithm already: 1 dB weighs as the 12 % of power pressure it stands for',
    source: 'derived'
  },
  mostFaults: {
    value: 20,
    unit: '1',
    why: 'whoever changed a part has changed more than anybody reads',
    source: 'ours'
  }
} as const satisfies DefaultTable
