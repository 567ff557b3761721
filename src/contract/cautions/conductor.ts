/** Cautions on a conductor against its load, its terminal and the size below it. */
import type { CautionCatalogue } from './entry.ts'

export const conductorCautions = {
  'near-miss': {
    level: 'note',
    meaning:
      'The next smaller size misses only the drop limit, and by little: a slightly shorter way or a slightly larger allowed drop would let it do.',
    basis: 'least section for the drop against the section of the size, derived; 10 % our choice'
  },
  'terminal-too-small': {
    level: 'care',
    meaning:
      'The conductor is larger than the amplifier’s terminal takes: crimp a reducing pin of the terminal’s size, never cut strands away; or take a size that fits.',
    basis: 'terminal and conductor sections compared; pins common practice, no source'
  },
  'cable-overloaded': {
    level: 'stop',
    meaning:
      'The load is more than this cable may carry for good in its surroundings, whatever fuse stands before it. Take a larger size, a better insulation or a cooler way.',
    basis: '33 CFR 183.425(b) (read): the load is at most the allowable current',
    sources: ['33-cfr-183-425']
  },
  'bare-source': {
    level: 'stop',
    meaning:
      'From this battery a cable runs to a load, to another battery or further than allowed before it meets a fuse: a short on it burns the car. Put a fuse at the post, at both ends of whatever joins two batteries.',
    basis: '33 CFR 183.455(b) (read): 7 in; 450 mm in cars, common practice',
    sources: ['33-cfr-183-455']
  },
  'fuse-in-return': {
    level: 'care',
    meaning:
      'A fuse in the return leaves the amplifier live when it opens, and its current finds another way, through the screens of signal leads. Fuses belong in the plus side, next to each source.',
    basis: 'common practice, no source'
  },
  'fuse-below-load': {
    level: 'care',
    meaning:
      'This fuse carries more than it is made for while music plays or the test tone sounds: it will open. Take the next rating that its cable carries, or a lower gain.',
    basis:
      'dense bass at most 75 % of the rating, common practice; a fuse-link carries 110 % for hours, ISO 8820 from memory'
  },
  'circuit-collapse': {
    level: 'stop',
    meaning:
      'In this state the sources cannot feed the amplifiers: the voltage falls until they switch off. Lower the gain, thicken or shorten the way, or add a source near the amplifiers.',
    basis: 'no stable state of the circuit, derived'
  },
  'converter-input': {
    level: 'stop',
    meaning:
      'The vehicle holds more volts than the converter allows at its input: it is destroyed, and may let them through to a 12 V amplifier. Take one whose sheet allows the charging voltage and its surges.',
    basis: 'data sheet of the converter; surges of 24 V vehicles: ISO 16750-2 (from memory)'
  },
  'converter-too-small': {
    level: 'care',
    meaning:
      'The amplifiers take more than the converter gives: its voltage falls until they stop, and no fuse notices. Take the next rating, less gain, or amplifiers for the voltage of the vehicle.',
    basis: 'a converter at its limit holds its current, not its voltage: data sheets, common practice'
  },
  'no-supply': {
    level: 'care',
    meaning: 'In this state nothing feeds this unit: an open relay parts it from every source.',
    basis: 'the circuit itself, derived'
  }
} as const satisfies CautionCatalogue
