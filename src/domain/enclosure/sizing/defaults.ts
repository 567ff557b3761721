/** Judgement values of sizing an enclosure; those that stand in for an absent field are noted as assumed. */
import type { DefaultTable } from '../../default.ts'

export const sizingDefaults = {
  usualQtc: {
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as the trade prints it
    value: [0.577, 0.707, 0.9],
    unit: '1',
    why: 'flattest delay, flattest level, small box (common practice, no source)',
    source: 'practice'
  },
  rippleLimitDb: {
    value: 1,
    unit: 'dB',
    why: 'more ripple than this is heard as one-note bass',
    source: 'ours'
  },
  chosenPeakDb: {
    value: 0.5,
    unit: 'dB',
    why: 'peak that a tuning chosen for a given volume may have',
    source: 'ours'
  },
  highestF3Hz: {
    value: 80,
    unit: 'Hz',
    why: 'A box whose half power lies above this carries no bass of its own',
    source: 'ours'
  },
  largestVolumes: {
    value: 5,
    unit: '1',
    why: 'A closed box larger than this many Vas hardly stiffens the cone: an infinite baffle does the same',
    source: 'ours'
  },
  smallestDelta: {
    value: 2,
    unit: '1',
    why: 'compliance of passive radiators over that of the box where none is given, at least; δ ≥ α',
    source: 'practice'
  },
  radiatorCompliance: {
    why: 'at least as compliant against the box as the drivers, and twice the box: the notch stays low (practice)',
    source: 'practice'
  },
  radiatorsPerFace: {
    value: 2,
    unit: '1',
    why: 'twice the area of the drivers moves twice their volume (practice, no source)',
    source: 'practice'
  },
  radiatorArea: { why: 'the area of one driver', source: 'practice' },
  usualBand: {
    value: [1, 2.6],
    unit: '1',
    why: '1 to 2.6 times the resonance of the driver',
    source: 'ours'
  },
  kinds: {
    value: ['closed', 'vented'],
    unit: 'word',
    why: 'the two every builder weighs first',
    source: 'practice'
  },
  roughBoardM: {
    value: 0.018,
    unit: 'm',
    why: 'board of a box whose outer size is estimated',
    source: 'practice'
  },
  roughDisplacementShare: {
    value: 0.08,
    unit: '1',
    why: 'what driver, port and braces take of the net volume of a box whose outer size is estimated',
    source: 'practice'
  },
  tuningStepHz: {
    value: 0.5,
    unit: 'Hz',
    why: 'step of tunings tried for a given volume: a builder can cut to it',
    source: 'ours'
  },
  tuningSpanHz: {
    value: [15, 100],
    unit: 'Hz',
    why: 'range of tunings tried for a given volume',
    source: 'ours'
  },
  comparedHz: {
    value: [20, 25, 31.5, 40, 50, 63, 80],
    unit: 'Hz',
    why: 'frequencies at which candidates are compared',
    source: 'practice'
  }
} as const satisfies DefaultTable
