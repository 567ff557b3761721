/** Judgement values of sizing a port; those that stand in for an absent field are noted as assumed. */
import type { DefaultTable, Rule } from '../../default.ts'

export const portSizingDefaults = {
  flattestSlot: {
    value: 10,
    unit: '1',
    why: 'width over height: a flatter slot is braked by its walls',
    source: 'practice'
  },
  lowestSlotM: {
    value: 0.04,
    unit: 'm',
    why: 'a lower slot hangs on every millimetre',
    source: 'practice'
  },
  cheekedSlot: {
    value: 6,
    unit: '1',
    why: 'width over height of a slot that is closed in with a cheek instead',
    source: 'ours'
  },
  smallerBoxShare: {
    value: 0.75,
    unit: '1',
    why: 'share of the volume that a smaller box with a higher tuning is offered at',
    source: 'ours'
  },
  resonanceClear: {
    value: 4,
    unit: '1',
    why: 'pipe resonance over the low-pass corner below which it is told',
    source: 'ours'
  },
  resonanceClose: {
    value: 2,
    unit: '1',
    why: 'pipe resonance over the low-pass corner below which it counts against the port',
    source: 'ours'
  },
  straightShare: {
    value: 1.25,
    unit: '1',
    why: 'longest straight run over the cube root of the net volume, no space being given',
    source: 'ours'
  },
  largePortShare: {
    value: 0.2,
    unit: '1',
    why: 'air in the ports over net volume from which the lumped tuning is 3 % high',
    source: 'derived'
  },
  roundDiametersM: {
    value: [0.04, 0.05, 0.06, 0.07, 0.075, 0.08, 0.09, 0.1, 0.11, 0.12, 0.125, 0.14, 0.15, 0.16, 0.18, 0.2, 0.25],
    unit: 'm',
    why: 'clear widths of round ports to choose from: whole tens and the usual pipe widths between',
    source: 'ours'
  },
  slotStepM: {
    value: 0.005,
    unit: 'm',
    why: 'steps of slot heights to offer',
    source: 'ours'
  },
  mostPorts: {
    value: 4,
    unit: '1',
    why: 'largest number of equal ports to offer',
    source: 'ours'
  },
  kind: { value: 'round', unit: 'word', why: 'the port that is easiest to build', source: 'practice' },
  mouth: { value: 'sharp', unit: 'word', why: 'plain ends', source: 'practice' },
  walls: {
    value: 'full-width',
    unit: 'word',
    why: 'cheapest to build: the box is three of its walls',
    source: 'practice'
  },
  innerEnd: { value: 'free', unit: 'word', why: 'the inner end stands free in the box', source: 'practice' },
  outerEnd: { value: 'flanged', unit: 'word', why: 'the outer end lies flush in the panel', source: 'practice' },
  flareRadiusM: {
    value: 0,
    unit: 'm',
    why: 'the length is that of a straight pipe; a rounding of known radius needs a longer one',
    source: 'derived'
  },
  bentShare: { value: 2, unit: '1', why: 'twice the longest straight run', source: 'ours' },
  chamberHeight: { why: 'a cube of the net volume', source: 'ours' },
  weighedFrom: {
    why: 'music seldom reaches lower, and the high-pass among the filters weighs the flow',
    source: 'practice'
  },
  lowPassGiven: { why: 'the corner of the low-pass among the filters', source: 'derived' },
  sharpSpeed: { why: '5 % of the speed of sound (Small 1973, from memory)', source: 'practice-port-speed' },
  flaredSpeed: { why: 'flared ends (choice of this service)', source: 'ours' }
} as const satisfies DefaultTable

export const belowTuning = (share: number): Rule => ({
  why: `${share} of the tuning: below it a high-pass has to protect the driver (practice, no source)`,
  source: 'practice'
})
