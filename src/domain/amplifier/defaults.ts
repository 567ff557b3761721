/** What stands in for absent fields of an amplifier, its drivers and the test tone. */
import type { DefaultTable, Rule } from '../default.ts'

export const amplifierDefaults = {
  ratingKind: {
    value: 'rms',
    unit: 'word',
    why: 'ratings taken as continuous RMS, all channels driven; peak, maximum and total figures cannot be matched',
    source: 'practice'
  },
  driverRatingKind: {
    value: 'rms',
    unit: 'word',
    why: 'driver power taken as continuous RMS of one driver, all its coils together',
    source: 'practice'
  },
  channels: {
    value: 1,
    unit: '1',
    why: 'no number of channels given: taken as a mono-block',
    source: 'practice'
  },
  channelsOfBridge: {
    value: 2,
    unit: '1',
    why: 'it bridges, so it has at least two channels',
    source: 'derived'
  },
  minimumBridgedOhm: { why: 'each channel of a bridged pair sees half the load', source: 'derived' },
  amplifierCount: { value: 1, unit: '1', why: 'one amplifier unless more are offered', source: 'practice' },
  rankBy: {
    value: 'power',
    unit: 'word',
    why: 'the power closest to the drivers’ rating first; price and size only count when asked for',
    source: 'ours'
  },
  /** For each 12 V; second-hand. */
  ratedVoltageV: {
    value: 14.4,
    unit: 'V',
    why: 'rating supply of ANSI/CTA-2006, 14.4 V per 12 V, for what its own fuses pass',
    source: 'practice'
  },
  partialLoadClass: { why: 'partial-load law from the efficiency', source: 'class-efficiency' },
  toneLevelDb: {
    value: 0,
    unit: 'dB',
    why: 'full-scale test tone: the reading is the target itself',
    source: 'gain-practice'
  },
  quietRecordingDb: {
    value: 0,
    unit: 'dB',
    why: 'no allowance for quiet recordings: the loudest music just reaches the target; an allowance is louder and clips loud recordings',
    source: 'gain-practice'
  }
} as const satisfies DefaultTable

export const classEfficiency = (named: string): Rule => ({
  why: `class ${named} at rated output, common practice; a data-sheet figure wins`,
  source: 'class-efficiency'
})

export const classIdleDraw = (named: string): Rule => ({
  why: `idle draw of class ${named}, common practice`,
  source: 'class-efficiency'
})
