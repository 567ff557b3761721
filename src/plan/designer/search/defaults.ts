/** How far a search looks, and what each wish means in figures. */
import type { DesignGoal } from '../../../contract/systems/words.ts'
import type { Default, DefaultTable } from '../../../domain/default.ts'

export interface Goal {
  /** Band over which the level held is averaged, each twelfth of an octave alike. */
  readonly fromHz: number
  readonly toHz: number
  /** What a doubling of the space the box takes must bring [dB]. */
  readonly doublingDb: number
  /** Group delay that costs nothing [s], and what each second beyond it costs [dB/s]. */
  readonly delayFreeS: number
  readonly delayDbPerS: number
  /** What a decibel of unevenness costs. */
  readonly unevennessWeight: number
  /** The protective high-pass never lies above: below it power is given up before bass. */
  readonly highestCornerHz: number
  readonly highestQtc: number
  /** Only closed boxes. */
  readonly closedOnly?: true
  /** The least box within this of the loudest system, instead of the loudest. */
  readonly withinDb?: number
}

export const searchDefaults = {
  volumesPerDecade: {
    value: 12,
    unit: '1',
    why: 'nodes stand on absolute values: a grid that hung on the request would let a wider limit find a worse box',
    source: 'ours'
  },
  lowestTuningHz: { value: 20, unit: 'Hz', why: 'below it a port plays what no music has', source: 'ours' },
  tuningsPerOctave: { value: 6, unit: '1', why: 'two semitones, as close as an ear asks', source: 'ours' },
  highestTuningHz: {
    value: 56,
    unit: 'Hz',
    why: 'above it a port plays what the front loudspeakers play',
    source: 'ours'
  },
  highestBandHz: {
    value: 80,
    unit: 'Hz',
    why: 'a band-pass is tuned to the middle of its band, not to its lower end',
    source: 'ours'
  },
  frontRatios: {
    value: [0.35, 0.5, 0.71, 1, 1.41, 2, 2.8],
    unit: '1',
    why: 'front chamber over the closed one; the textbook’s shapes lie within',
    source: 'ours'
  },
  frontSteps: { value: [1.19, 1.09, 1.045], unit: '1', why: 'nearer and nearer to the best of them', source: 'ours' },
  bandNodes: {
    value: 2,
    unit: '1',
    why: 'a band-pass has one more figure to look for: every second node of the grid, steps twice as wide',
    source: 'ours'
  },
  seeds: { value: 4, unit: '1', why: 'regions that are refined', source: 'ours' },
  apartVolume: { value: 1.25, unit: '1', why: 'how far apart they are', source: 'ours' },
  apartTuning: { value: 1.12, unit: '1', why: 'how far apart they are', source: 'ours' },
  halvings: { value: 6, unit: '1', why: 'steps of a region, each half of the one before', source: 'ours' },
  mostMoves: { value: 3, unit: '1', why: 'moves with one step', source: 'ours' },
  sameScoreDb: {
    value: 1e-6,
    unit: 'dB',
    why: 'scores that differ by less are equal; then closed first, the smaller, the lower: no order of lists decides',
    source: 'ours'
  },
  referenceM3: {
    value: 0.05,
    unit: 'm³',
    why: 'room is counted against this, so that scores of a goal compare',
    source: 'ours'
  },
  portFromHz: {
    value: 20,
    unit: 'Hz',
    why: 'from here the air of a port limits what is worth hearing',
    source: 'ours'
  },
  portToHz: { value: 90, unit: 'Hz', why: 'and up to here', source: 'ours' },
  areaShares: {
    value: [1, 0.9, 0.8, 0.72, 0.64, 0.57, 0.5, 0.45, 0.4, 0.34],
    unit: '1',
    why: 'of the area at which the air limits nothing, tried in turn; below a third it is a leak and no port',
    source: 'ours'
  },
  leastAreaM2: { value: 12e-4, unit: 'm²', why: 'less is no port but a hole', source: 'practice' },
  shortDb: {
    value: -1e6,
    unit: 'dB',
    why: 'a wish that falls short of its level loses to every one that keeps it',
    source: 'ours'
  },
  boundSlackDb: {
    value: 0.3,
    unit: 'dB',
    why: 'the walk over gains goes in steps, so a looser limit may come out this much lower',
    source: 'ours'
  },
  looseQts: {
    value: 0.55,
    unit: '1',
    why: 'a free cone of this Qts or more rings in a vented box: unevenness counts in full',
    source: 'ours'
  },
  tightRise: {
    value: 1.45,
    unit: '1',
    why: 'what a small closed box may add to the damping of a loose driver before it booms',
    source: 'ours'
  }
} as const satisfies DefaultTable

const free = { delayFreeS: 0, delayDbPerS: 0, unevennessWeight: 0 } as const

/** In words they stand in the contract; tuned on a prototype’s designs for ten invented drivers. Units stand in the names of the fields. */
export const goals: Readonly<Record<DesignGoal, Default<Goal>>> = {
  everyday: {
    value: {
      fromHz: 25,
      toHz: 63,
      doublingDb: 1.8,
      delayFreeS: 0.018,
      delayDbPerS: 100,
      unevennessWeight: 0.3,
      highestCornerHz: 30,
      highestQtc: 1
    },
    unit: 'word',
    why: 'a doubling of the room must bring 1.8 dB, ringing beyond 18 ms and bumps cost a little; the cone is not held by a filter above 30 Hz',
    source: 'ours'
  },
  low: {
    value: {
      fromHz: 20,
      toHz: 31.5,
      doublingDb: 1.8,
      ...free,
      highestCornerHz: 20,
      highestQtc: 1.1
    },
    unit: 'word',
    why: 'a filter above 20 Hz would take what is asked for; room still counts, or no box would be large enough',
    source: 'ours'
  },
  loud: {
    value: {
      fromHz: 25,
      toHz: 63,
      doublingDb: 1.5,
      ...free,
      highestCornerHz: 35,
      highestQtc: 1.2
    },
    unit: 'word',
    why: 'a filter up to 35 Hz lets the cone take all the power where music is loudest',
    source: 'ours'
  },
  tight: {
    value: {
      fromHz: 25,
      toHz: 80,
      doublingDb: 1.5,
      delayFreeS: 0.01,
      delayDbPerS: 1000,
      unevennessWeight: 0.2,
      highestCornerHz: 20,
      highestQtc: 0.8,
      closedOnly: true
    },
    unit: 'word',
    why: 'each millisecond of ringing beyond 10 costs a decibel; Qtc stays near 0.8 or what the driver itself allows',
    source: 'ours'
  },
  small: {
    value: {
      fromHz: 31.5,
      toHz: 63,
      doublingDb: 6,
      ...free,
      highestCornerHz: 40,
      highestQtc: 1.2,
      withinDb: 6
    },
    unit: 'word',
    why: '6 dB are a quarter of the power: heard, and still the same music; a filter up to 40 Hz saves the cone in a small box',
    source: 'ours'
  }
}
