/** Drivers looked at for a size: figures that a shelf has, on round values. */
import type { DefaultTable } from '../../../domain/default.ts'

export const regionDefaults = {
  middle: {
    value: { nominalM: 0.25, fsHz: 31, vasM3: 26e-3 },
    unit: 'word',
    why: 'a driver of 25 cm, from which others follow by the powers of their size, as invented drivers of 20 to 38 cm do',
    source: 'ours'
  },
  fsPower: { value: -0.72, unit: '1', why: 'resonance falls with the size', source: 'ours' },
  vasPower: { value: 4, unit: '1', why: 'compliance grows with the square of the area', source: 'ours' },
  fsShares: {
    value: [0.75, 0.85, 0.95, 1.05, 1.2, 1.35, 1.5],
    unit: '1',
    why: 'resonances of a size, over the middling one',
    source: 'ours'
  },
  qtsNodes: {
    value: [0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7],
    unit: '1',
    why: 'Qts from strong motors to weak ones',
    source: 'ours'
  },
  vasShares: {
    value: [0.4, 0.6, 0.9, 1.35, 2, 3],
    unit: '1',
    why: 'compliances of a size, over the middling one',
    source: 'ours'
  },
  ratedOhm: { value: 4, unit: 'Ω', why: 'the commonest coil of a car', source: 'practice' },
  tolerancesDb: {
    value: [2, 3, 4],
    unit: 'dB',
    why: 'what a driver at the edge gives away, less than the seats of a car differ; more where else one axis were a single value',
    source: 'ours'
  },
  mostAttempts: {
    value: 6,
    unit: '1',
    why: 'boxes laid out for a corner before it counts as unsuited',
    source: 'ours'
  },
  mostTurns: { value: 12, unit: '1', why: 'corners that may turn out so', source: 'ours' },
  areaStep: {
    value: 1.03,
    unit: '1',
    why: 'drivers are told apart by less than the air in their ports',
    source: 'ours'
  },
  cableM: { value: 5, unit: 'm', why: 'power cable of a plan of which only the box is read', source: 'practice' }
} as const satisfies DefaultTable
