/** How far the inputs of a reading may lie from the plan. */
import type { DefaultTable } from '../../default.ts'

export const readingDefaults = {
  restBandV: { value: 0.15, unit: 'V', why: 'a battery full or not, for each 12 V', source: 'ours' },
  statedBand: { value: 0.1, unit: '1', why: 'of a stated battery resistance', source: 'ours' },
  setBandV: { value: 0.3, unit: 'V', why: 'of a regulator by temperature, for each 12 V', source: 'ours' },
  limitBand: { value: 0.15, unit: '1', why: 'of what an alternator can give', source: 'ours' },
  cableBand: { value: 0.12, unit: '1', why: 'length 5 %, section 3 %, temperature 6 %, and lugs', source: 'ours' },
  fuseBand: { value: 0.25, unit: '1', why: 'of the resistance of a fuse, by make', source: 'ours' },
  linkBand: { value: 0.1, unit: '1', why: 'of a measured body or contact', source: 'ours' },
  guessBand: { value: 0.5, unit: '1', why: 'of a body that nobody measured', source: 'ours' },
  musicBand: { value: 0.3, unit: '1', why: 'music is no steady load', source: 'ours' },
  loadBand: { value: 0.05, unit: '1', why: 'of a steady load', source: 'ours' },
  smallBand: { value: 0.5, unit: '1', why: 'of what a coil or a turn-on input takes', source: 'ours' },
  vehicleBandA: { value: 10, unit: 'A', why: 'what the vehicle itself takes comes and goes', source: 'ours' }
} as const satisfies DefaultTable
