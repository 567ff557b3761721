/** Judgement values of whether a box stands in a space. */
import type { DefaultTable } from '../../../domain/default.ts'

export const roomDefaults = {
  tubeWallM: { value: 3e-3, unit: 'm', why: 'wall of a tube, as the layout counts it', source: 'practice' },
  mostRows: {
    value: 4,
    unit: '1',
    why: 'rows of drivers and tubes one above the other that are looked at',
    source: 'ours'
  },
  sameArea: {
    value: 0.985,
    unit: '1',
    why: 'a pipe this much smaller than asked for still counts: 1.5 % of air speed',
    source: 'ours'
  },
  mostTubes: {
    value: 2,
    unit: '1',
    why: 'one pipe of the usual widths, or two where none is wide enough',
    source: 'ours'
  },
  spareM: {
    value: 5e-3,
    unit: 'm',
    why: 'more than the rule asks, for the steps of the saw and for braces',
    source: 'ours'
  },
  mouthSides: {
    value: 4,
    unit: '1',
    why: 'strips behind a front that comes off, each about as long as a cube of the air is wide',
    source: 'ours'
  },
  acrossStepM: {
    value: 0.02,
    unit: 'm',
    why: 'steps in which room for a tube across a chamber is asked for',
    source: 'ours'
  },
  leastAirShare: {
    value: 0.35,
    unit: '1',
    why: 'air that a driver has at least, over the cube of its flange; below it no driver is built in',
    source: 'ours'
  },
  volumes: { value: 24, unit: '1', why: 'net volumes looked at', source: 'ours' },
  volumeStep: { value: 1.2, unit: '1', why: 'each this much larger than the one before', source: 'ours' },
  tuningHz: { value: 34, unit: 'Hz', why: 'an ordinary tuning', source: 'practice' },
  portAreaPerM3: {
    value: 0.125,
    unit: 'm²/m³',
    why: 'an eighth of the box’s litres in dm²: 50 cm² on 40 L',
    source: 'practice'
  },
  longestPortM: { value: 1.05, unit: 'm', why: 'a longer port resonates as a pipe within the bass', source: 'ours' },
  cutOutM: { value: 0.2, unit: 'm', why: 'hole of a driver that is not described', source: 'practice' },
  lastLegHeights: {
    value: 1.5,
    unit: '1',
    why: 'heights of the slot that its last leg keeps before the wall it faces',
    source: 'ours'
  }
} as const satisfies DefaultTable
