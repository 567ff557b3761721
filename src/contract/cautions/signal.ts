/** Cautions of the signal rooms. */
import type { CautionCatalogue } from './entry.ts'

export const signalCautions = {
  'bridge-tied-source': {
    level: 'care',
    meaning:
      'Loudspeaker outputs of vehicles rest at half the supply on both wires: grounding either destroys the source. Inputs must be differential or isolated.',
    basis: 'derived: outputs of a bridge'
  },
  'differential-output': {
    level: 'care',
    meaning: 'A differential line output meets an input that ties its minus to ground.',
    basis: 'common practice, no source'
  },
  'ground-loop': {
    level: 'note',
    meaning:
      'Source and amplifier grounded at different places pick up alternator whine. In this order: one ground point for both, differential inputs, an isolator, signal and power cables on opposite sides, a sound shield. Never take away a safety or vehicle ground.',
    basis: 'derived: ripple current times shared resistance; order common practice, no source'
  },
  'factory-processing': {
    level: 'note',
    meaning: 'Equaliser, delay and level-dependent bass of the vehicle stay in the signal.',
    basis: 'common practice, no source'
  },
  'connector-pins': {
    level: 'care',
    meaning: 'Pins of source connectors differ between makes: measure before connecting.',
    basis: 'ISO 10487 as three descriptions list it (second-hand)'
  },
  'input-too-low': {
    level: 'care',
    meaning: 'The source is too weak for full power even at full gain; a line driver or another output is needed.',
    basis: "the amplifier's data sheet"
  },
  'input-too-high': {
    level: 'care',
    meaning: 'The source is stronger than the input takes; it clips before any gain control.',
    basis: "the amplifier's data sheet"
  },
  'allowance-clips': {
    level: 'care',
    meaning: 'An allowance for quiet recordings clips loud ones: more heat in amplifier and coils.',
    basis: 'common practice, no source'
  },
  'boost-after-gain': {
    level: 'note',
    meaning: 'A boost of x dB after the gain setting takes x dB more from the amplifier.',
    basis: 'derived'
  },
  'tone-outside-band': {
    level: 'care',
    meaning: 'The test tone is weakened by a filter, so the gain would be set too high.',
    basis: 'derived'
  },
  'true-rms-meter': {
    level: 'note',
    meaning: 'Many meters are only right near 50 Hz sines or above: use one that reads true RMS at the test tone.',
    basis: 'common practice, no source'
  },
  'no-protective-high-pass': {
    level: 'care',
    meaning: 'No corner is known for the filter that keeps the cone from running away below the band.',
    basis: 'derived: below the tuning a port no longer loads the cone'
  },
  'turn-on-overload': {
    level: 'note',
    meaning: 'The turn-on inputs together draw more than the switched output may deliver; a relay takes over.',
    basis: 'ISO 10487, 150 to 300 mA (second-hand)'
  },
  'relay-coil-load': {
    level: 'care',
    meaning: 'The coil of a common vehicle relay is itself too much for the switched output.',
    basis: "derived: Ohm's law"
  },
  'output-overloaded': {
    level: 'care',
    meaning:
      'The switched output of a source gives less than hangs on it: its voltage sags, so that nothing switches on, or it is destroyed. A relay, fed behind a fuse of its own, takes the load.',
    basis: 'ISO 10487, 150 to 300 mA (second-hand)'
  },
  'signal-sensing': {
    level: 'note',
    meaning: 'An amplifier that switches itself on by the signal may be late, may stay on, or may drop out.',
    basis: 'common practice, no source'
  },
  'accessory-turn-on': {
    level: 'care',
    meaning: 'Turning an amplifier on from an accessory feed needs a fuse of its own and a circuit that may be tapped.',
    basis: 'common practice, no source'
  }
} as const satisfies CautionCatalogue
