/** Judgement values of the signal room: common practice, no source, unless marked; every one used is echoed. */
import { connectorIso10487 } from './connector-iso-10487.ts'

export const signalJudgement = {
  toneHz: 50,
  outputOhm: { value: 600, why: 'line outputs have 100 to 1000 Ω; the upper half is taken' },
  inputOhm: { value: 10_000, why: 'amplifier inputs have 10 to 22 kΩ; the lowest is taken' },
  inputsInParallel: { value: 1, why: 'one amplifier input on the line' },
  bridgeTied: {
    value: true,
    why: 'nearly all loudspeaker outputs of vehicles are bridge-tied: both wires rest at half the supply'
  },
  converterLineV: { value: 2, why: 'usual line level, inside the range of most inputs' },
  digitalLineV: { value: 2, why: 'full scale of a converter’s line output when its sheet says nothing' },
  remoteLimitA: {
    value: connectorIso10487.switchedOutputA[0],
    why: 'switched output of ISO 10487: 150 to 300 mA; only the lower is certain'
  },
  remoteLoadA: { value: 0.05, why: 'turn-on input of an amplifier: 5 to 50 mA; the upper is taken' },
  relayCoilOhm: { value: 90, why: 'coil of a common 12 V vehicle relay: 80 to 100 Ω' },
  nominalVoltageV: { value: 12, why: 'vehicle voltage not stated: 12 V' },
  /** For each 12 V. */
  systemVoltageV: { value: 14.4, why: 'highest usual voltage with the engine running, 14.4 V per 12 V' },
  lowPassHz: { value: 80, why: 'usual hand-over to the front speakers' },
  order: { value: 4, why: '24 dB an octave, as most amplifiers and processors offer' },
  /** Below the tuning the cone runs away; about a third of an octave of room is left to the port. */
  highPassOfTuning: {
    value: 0.8,
    why: 'protective high-pass a third of an octave below the tuning; give excursionLimitHz from the response instead'
  },
  /** Fuses of the turn-on feed [A]. */
  turnOnFusesA: [1, 2, 3],
  turnOnFuseLoad: 0.75,
  /** Half an octave of room between the tone and a filter corner. */
  toneRoom: Math.SQRT2,
  narrowestBand: 1.5
} as const
