/** Sources of the coil, amplifier and signal rooms. */
import type { SourceList } from './entry.ts'

export const loadSources = {
  'kirchhoff-networks': {
    title: "Kirchhoff's laws: series and parallel connection of resistances, division of current, voltage and power",
    status: 'derived'
  },
  'oeis-a000084': {
    title: 'OEIS A000084, number of series-parallel networks of n unlabelled elements',
    status: 'from memory'
  },
  'oeis-a048211': {
    title: 'OEIS A048211, number of distinct resistances from n equal resistors in series-parallel networks',
    status: 'from memory'
  },
  'equal-power-practice': {
    title: 'Continuous amplifier power equal to the sum of the drivers’ ratings, 0.75 to 1.5 times accepted',
    status: 'practice'
  },
  'speaker-cable-practice': {
    title: 'Loudspeaker cable of 16 to 8 AWG with at most 5 % of the load in the wire',
    status: 'practice'
  },
  'gain-practice': {
    title: 'Setting the gain by a voltmeter with a test tone, allowance for quiet recordings',
    status: 'practice'
  },
  'signal-practice': {
    title:
      'Levels and resistances of line outputs and inputs, turn-on currents, corner frequencies, order of first switching-on',
    status: 'practice'
  },
  'iso-10487': {
    title:
      'ISO 10487, connectors of vehicle radios: pin functions and the 150 to 300 mA of the switched output, as three descriptions list them',
    status: 'second-hand'
  },
  'din-72552': {
    title: 'DIN 72552, terminal numbers of vehicle wiring, as reprinted; 58 and 75 from memory',
    status: 'second-hand'
  },
  'equal-coil-power': {
    title: 'All coils of a group driven, in phase, each with the same power',
    status: 'practice'
  }
} as const satisfies SourceList
