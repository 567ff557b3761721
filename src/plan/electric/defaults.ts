/** How cable is laid where nothing is said, and what stands between batteries and block. */
import type { DefaultTable } from '../../domain/default.ts'

export const wiringDefaults = {
  wireInsideM: { value: 0.6, unit: 'm', why: 'from the terminal to each driver inside the box', source: 'practice' },
  turnOnSize: {
    value: '0.75 mm²',
    unit: 'word',
    why: 'a fraction of an ampere, thick enough to be crimped',
    source: 'practice'
  },
  relayWireM: {
    value: 0.5,
    unit: 'm',
    why: 'the turn-on relay stands beside the amplifiers: its feed from a plus terminal, and the wire from its contact',
    source: 'practice'
  },
  tapFuseA: {
    value: 1,
    unit: 'A',
    why: 'where an accessory circuit is tapped for the coil of the relay',
    source: 'practice'
  },
  feedSizes: {
    value: ['0.75 mm²', '1.5 mm²', '2.5 mm²', '4 mm²', '6 mm²', '10 mm²'],
    unit: 'word',
    why: 'sizes of thin wire that are sold',
    source: 'practice'
  },
  linkFuseA: {
    value: 3,
    unit: 'A',
    why: 'before the coil of an isolating relay, which takes up to an ampere and a half, or the input of a charger that senses the engine',
    source: 'practice'
  },
  runsFusedAtEnd: {
    value: 3,
    unit: '1',
    why: 'from so many cables side by side on each is fused at its far end too: the others would feed a short in one',
    source: 'practice'
  },
  leadMm2: {
    value: 0.75,
    unit: 'mm²',
    why: '0.5 to 1 mm² carry the milliamperes of an input and bear pulling through a car',
    source: 'practice'
  },
  channels: { value: 2, unit: '1', why: 'left and right', source: 'derived' },
  converterTailM: {
    value: 0.5,
    unit: 'm',
    why: 'from a converter of the level to the amplifier beside it',
    source: 'practice'
  },
  relayPieceM: { value: 0.2, unit: 'm', why: 'from an isolating relay to the block beside it', source: 'practice' },
  chargersA: {
    value: [20, 30, 40, 50, 60],
    unit: 'A',
    why: 'outputs of chargers between batteries that are sold',
    source: 'practice'
  },
  relaysA: { value: [100, 200, 300, 500], unit: 'A', why: 'contacts for good that are sold', source: 'practice' },
  relayStepA: { value: 100, unit: 'A', why: 'larger ones come in whole hundreds', source: 'practice' },
  chargerOverNominal: { value: 1.2, unit: '1', why: 'it holds 14.4 V from 12 V', source: 'practice' },
  coldC: { value: 20, unit: '°C', why: 'cold copper lets most through', source: 'practice' }
} as const satisfies DefaultTable
