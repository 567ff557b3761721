/** Judgement values of the signal room; those that stand in for an absent field are noted as assumed. */
import type { DefaultTable } from '../default.ts'
import { connectorIso10487 } from './connector-iso-10487.ts'

export const signalDefaults = {
  bridged: { value: false, unit: 'word', why: 'a single channel, not a bridged pair', source: 'practice' },
  boostDb: { value: 0, unit: 'dB', why: 'equaliser and bass boost stay flat', source: 'gain-practice' },
  toneHz: {
    value: 50,
    unit: 'Hz',
    why: '50 Hz, or the middle of the band where 50 Hz is not half an octave inside it',
    source: 'gain-practice'
  },
  ratingKind: {
    value: 'rms',
    unit: 'word',
    why: 'power taken as continuous RMS into this load',
    source: 'practice'
  },
  outputOhm: {
    value: 600,
    unit: 'Ω',
    why: 'line outputs have 100 to 1000 Ω; the upper half is taken',
    source: 'practice'
  },
  inputOhm: {
    value: 10_000,
    unit: 'Ω',
    why: 'amplifier inputs have 10 to 22 kΩ; the lowest is taken',
    source: 'practice'
  },
  inputsInParallel: { value: 1, unit: '1', why: 'one amplifier input on the line', source: 'practice' },
  bridgeTied: {
    value: true,
    unit: 'word',
    why: 'nearly all loudspeaker outputs of vehicles are bridge-tied: both wires rest at half the supply',
    source: 'practice'
  },
  converterLineV: {
    value: 2,
    unit: 'V',
    why: 'usual line level, inside the range of most inputs',
    source: 'practice'
  },
  digitalLineV: {
    value: 2,
    unit: 'V',
    why: 'full scale of a converter’s line output when its sheet says nothing',
    source: 'practice'
  },
  remoteLimitA: {
    value: connectorIso10487.switchedOutputA[0],
    unit: 'A',
    why: 'switched output of ISO 10487: 150 to 300 mA; only the lower is certain',
    source: 'iso-10487'
  },
  remoteLoadA: {
    value: 0.05,
    unit: 'A',
    why: 'turn-on input of an amplifier: 5 to 50 mA; the upper is taken',
    source: 'practice'
  },
  relayCoilOhm: {
    value: 90,
    unit: 'Ω',
    why: 'coil of a common 12 V vehicle relay: 80 to 100 Ω',
    source: 'practice'
  },
  nominalVoltageV: { value: 12, unit: 'V', why: 'vehicle voltage not stated: 12 V', source: 'practice' },
  /** For each 12 V. */
  systemVoltageV: {
    value: 14.4,
    unit: 'V',
    why: 'highest usual voltage with the engine running, 14.4 V per 12 V',
    source: 'practice'
  },
  order: {
    value: 4,
    unit: '1',
    why: '24 dB an octave, as most amplifiers and processors offer',
    source: 'practice'
  },
  turnOnFusesA: {
    value: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30],
    unit: 'A',
    why: 'blade fuses of the turn-on feed',
    source: 'practice'
  },
  turnOnFuseLoad: {
    value: 0.75,
    unit: '1',
    why: 'share of its rating that fills a fuse of the feed',
    source: 'fuse-load-ratio'
  },
  toneRoom: {
    value: Math.SQRT2,
    unit: '1',
    why: 'half an octave of room between the tone and a filter corner',
    source: 'ours'
  },
  narrowestBand: { value: 1.5, unit: '1', why: 'a narrower band between the corners is none', source: 'ours' }
} as const satisfies DefaultTable
