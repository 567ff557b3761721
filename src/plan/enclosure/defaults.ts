/** Judgement values of trying boxes one after the other, and of telling them apart. */
import type { DefaultTable } from '../../domain/default.ts'

export const enclosurePlanDefaults = {
  upperFromHz: {
    value: 40,
    unit: 'Hz',
    why: 'level of the upper bass from here up, of the lower below',
    source: 'ours'
  },
  noticedLevelDb: { value: 1, unit: 'dB', why: 'a decibel is just heard', source: 'ours' },
  noticedRoomShare: { value: 0.2, unit: '1', why: 'a fifth of the room is noticed', source: 'ours' },
  noticedDelayS: { value: 3e-3, unit: 's', why: 'three milliseconds are noticed', source: 'ours' },
  noticedPriceShare: { value: 0.05, unit: '1', why: 'a twentieth of the price is noticed', source: 'ours' },
  apartLevelDb: {
    value: 2,
    unit: 'dB',
    why: 'two boxes are a choice where one level differs by so much',
    source: 'ours'
  },
  apartRoomOctaves: { value: 0.4, unit: '1', why: 'or the room by a third more', source: 'ours' },
  apartDelayS: { value: 10e-3, unit: 's', why: 'or the group delay by so much', source: 'ours' },
  apartKind: { value: 0.7, unit: '1', why: 'another kind of box is most of a choice', source: 'ours' },
  mostAlternatives: {
    value: 4,
    unit: '1',
    why: 'a wish is given up after so many attempts; there are others',
    source: 'ours'
  },
  musicDuty: {
    value: 0.25,
    unit: '1',
    why: 'music heats with less than a quarter of a full sine: usual 0.13 to 0.2, so on the safe side',
    source: 'practice'
  },
  springShare: { value: 0.08, unit: '1', why: 'second harmonic of the air about 5 %', source: 'ours' },
  leastM3: { value: 3e-3, unit: 'm³', why: 'least air a driver has in any box that is looked at', source: 'ours' },
  musicFromHz: { value: 20, unit: 'Hz', why: 'bass below this is rare and falls 12 dB an octave', source: 'ours' },
  musicSlopeOrder: { value: 2, unit: '1', why: 'bass below this is rare and falls 12 dB an octave', source: 'ours' },
  gainStepDb: { value: 1, unit: 'dB', why: 'steps in which the gain is looked for', source: 'ours' },
  braced: {
    value: 1.02,
    unit: '1',
    why: 'air that braces take, over what is wanted; the layout sets them where they fit',
    source: 'ours'
  },
  mostTried: { value: 6, unit: '1', why: 'boxes laid out before the textbook’s alignments are tried', source: 'ours' },
  apartVolume: { value: 1.12, unit: '1', why: 'boxes nearer than this are one volume', source: 'ours' },
  apartTuning: { value: 1.06, unit: '1', why: 'boxes of one volume nearer than this are one box', source: 'ours' },
  mostOfAVolume: {
    value: 2,
    unit: '1',
    why: 'tunings of about one volume that are laid out: where two do not stand, it is the volume that does not',
    source: 'ours'
  },
  asLoudDb: { value: 0.05, unit: 'dB', why: 'what differs by less is as loud', source: 'ours' },
  sparedShare: {
    value: 0.03,
    unit: '1',
    why: 'a volume that lacks no more than this is built smaller; the ear does not tell 3 %',
    source: 'ours'
  },
  underLargest: {
    value: 0.999,
    unit: '1',
    why: 'under the largest box by this, so that the step of the saw still finds it',
    source: 'ours'
  },
  unmeasured: {
    value: 10,
    unit: '1',
    why: 'what cannot be measured misses by more than anything that can',
    source: 'ours'
  },
  mostShown: {
    value: 4,
    unit: '1',
    why: 'attempts whose boxes are laid out to find the nearest miss, where their ports already do not fit',
    source: 'ours'
  },
  nearlyEmptyShare: {
    value: 0.15,
    unit: '1',
    why: 'emptier than this a last sheet is worth another size',
    source: 'ours'
  },
  fullestShare: {
    value: 0.92,
    unit: '1',
    why: 'fuller than this no sheet of a box was ever cut in the trials',
    source: 'ours'
  },
  ringsM: {
    value: [0.002, 0.004, 0.008, 0.014, 0.024, 0.04, 0.06],
    unit: 'm',
    why: 'by how much a box is made wider or higher to save a sheet',
    source: 'ours'
  },
  narrowM: { value: 0.03, unit: 'm', why: 'the most of it where the caller says how the box grows', source: 'ours' },
  mostLaidOut: { value: 12, unit: '1', why: 'boxes laid out for one saving before it is given up', source: 'ours' },
  sameAirShare: {
    value: 2.5e-3,
    unit: '1',
    why: 'off the air wanted by no more than this, about half a step of the saw',
    source: 'ours'
  }
} as const satisfies DefaultTable
