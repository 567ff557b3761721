/** Judgement values of asking for one box, its port and its response. */
import type { DefaultTable } from '../../../domain/default.ts'
import { portSpeeds } from '../../../domain/port/air-speed.ts'

export const boxPlanDefaults = {
  mostTurns: {
    value: 8,
    unit: '1',
    why: 'over a footprint a box of the least height may hold too much: it is drawn in no further than it must; turns of halving',
    source: 'ours'
  },
  farthestInM: { value: 0.4, unit: 'm', why: 'the farthest it is drawn in', source: 'ours' },
  bassShare: {
    value: 0.5,
    unit: '1',
    why: 'from this share of the resonance on, the filter takes what the box would have played',
    source: 'ours'
  },
  airSpeedsTriedMPerS: {
    value: [portSpeeds.sharp, portSpeeds.flared, 0.95 * portSpeeds.highest],
    unit: 'm/s',
    why: 'quiet, audible up close, the most that common practice allows, less what the finished box may differ',
    source: 'ours'
  },
  mouthRoomM: {
    value: 0.1,
    unit: 'm',
    why: 'left free behind an inner mouth, and for the bend of a folded slot; the layout of the box then measures it',
    source: 'ours'
  },
  usualSlotM: { value: 0.05, unit: 'm', why: 'height that a slot of ordinary area has', source: 'ours' },
  flatSlotShare: {
    value: 1 / 3,
    unit: '1',
    why: 'of the width of the box, for a slot that would be flat over all of it',
    source: 'ours'
  },
  chart: {
    value: { fromHz: 10, toHz: 200, points: 120 },
    unit: 'Hz',
    why: 'the frequencies of a bass system, close enough for a smooth chart',
    source: 'ours'
  },
  protectiveOrder: { value: 2, unit: '1', why: 'second order is what amplifiers have built in', source: 'practice' },
  staves: {
    value: 12,
    unit: '1',
    why: 'twelve fill 95 % of their circle, with mitres of 15° that every saw is set to',
    source: 'ours'
  },
  asAskedPoints: { value: 8, unit: '1', why: 'an alignment that was asked for comes first', source: 'ours' },
  suitedPoints: { value: 4, unit: '1', why: 'then one of the kind that suits the drivers', source: 'ours' },
  ventedPoints: { value: 2, unit: '1', why: 'then a vented one, which plays lower', source: 'ours' }
} as const satisfies DefaultTable
