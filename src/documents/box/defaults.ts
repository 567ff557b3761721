/** How a box is drawn where the caller does not say. */
import type { DefaultTable } from '../../domain/default.ts'

export const drawingDefaults = {
  routedWebM: {
    value: 0.002,
    unit: 'm',
    why: 'm: the cutter passes between two parts and leaves 2 mm',
    source: 'practice'
  },
  dogBones: {
    value: true,
    unit: 'word',
    why: 'a square part goes into a corner only where the cutter went past it',
    source: 'practice'
  },
  tabs: { value: true, unit: 'word', why: 'a part that is routed free moves into the cutter', source: 'practice' },
  sheets: { why: 'the usual sheet of this board', source: 'practice' },
  units: { value: 'metric', unit: 'word', why: 'metric unless asked', source: 'ours' },
  inches: { value: 'sixteenths', unit: 'word', why: 'a tape measure reads sixteenths', source: 'practice' },
  show: { value: 'both', unit: 'word', why: 'panels and cut sheets belong together', source: 'ours' }
} as const satisfies DefaultTable
