/** How far a search over drivers and amplifiers goes. */
import type { DefaultTable } from '../../../domain/default.ts'

export const systemDefaults = {
  slack: {
    value: 1.05,
    unit: '1',
    why: 'what a box may take more as foreseen than it may as laid out',
    source: 'ours'
  },
  neighbourhood: { value: 1.5, unit: '1', why: 'how far a search goes from the volume foreseen', source: 'ours' },
  mostDesigns: {
    value: 6,
    unit: '1',
    why: 'designs laid out for one system before it is given up; there are others',
    source: 'ours'
  },
  mostPorts: { value: 4, unit: '1', why: 'ports tried for one design before it is given up', source: 'ours' },
  foreseenSlack: {
    value: 0.05,
    unit: '1',
    why: 'what a box may break a limit by as foreseen, to be built and looked at: sizes are foreseen to 4 %',
    source: 'ours'
  },
  areaStep: {
    value: 1.1,
    unit: '1',
    why: 'areas are asked of the room in steps of a tenth, the next above, so that amplifiers ask for the same boxes',
    source: 'ours'
  },
  voltageStepDb: {
    value: 1,
    unit: 'dB',
    why: 'bounds are worked out for gains a decibel apart, the next above: amplifiers share them',
    source: 'ours'
  },
  sameRank: {
    value: 1e-9,
    unit: '1',
    why: 'figures of parts have crossed the wire: what differs by less is equal',
    source: 'ours'
  },
  mostRelaxed: { value: 6, unit: '1', why: 'systems that are built to find one that breaks least', source: 'ours' },
  spareBuilds: {
    value: 20,
    unit: '1',
    why: 'systems built beyond those shown, for those that come out otherwise than foreseen',
    source: 'ours'
  },
  levelStepDb: {
    value: 1,
    unit: 'dB',
    why: 'a decibel is noticed; steps stand on absolute values, so that joined parts have the steps of the whole',
    source: 'ours'
  },
  reachStepOctaves: { value: 1 / 6, unit: '1', why: 'a sixth of an octave is noticed', source: 'ours' },
  roomStepOctaves: { value: 1 / 4, unit: '1', why: 'a fifth of the room is noticed', source: 'ours' },
  currentStepOctaves: { value: 1 / 4, unit: '1', why: 'a fifth of the amperes is noticed', source: 'ours' }
} as const satisfies DefaultTable
