/** What stands in for absent fields of an enclosure, its drivers and its drive. */
import type { DefaultTable } from '../../default.ts'

export const enclosureDefaults = {
  ports: { value: 1, unit: '1', why: 'a single port', source: 'practice' },
  radiators: { value: 1, unit: '1', why: 'a single radiator', source: 'practice' },
  drivers: { value: 1, unit: '1', why: 'a single driver', source: 'practice' },
  isobaricDrivers: { value: 2, unit: '1', why: 'one pair', source: 'practice' },
  inSeries: { value: 1, unit: '1', why: 'all drivers in parallel', source: 'practice' },
  inverted: { value: false, unit: 'word', why: 'wired like the others', source: 'practice' },
  isobaricConnection: { value: 'parallel', unit: 'word', why: 'the lower impedance', source: 'practice' },
  groupConnection: { value: 'parallel', unit: 'word', why: 'every group across the terminals', source: 'practice' },
  seriesOhm: { value: 0, unit: 'Ω', why: 'cable and amplifier without resistance', source: 'ours' },
  /** Of a vented box of 25 to 100 L; the opening of part III was read. */
  openedLeakQ: {
    value: 7,
    unit: '1',
    why: 'opened boxes of 25 to 100 L measure 5 to 10 (Small 1973)',
    source: 'small-1973-vented-box'
  },
  groupOhm: { why: 'the DC resistance of the drivers as they are joined', source: 'derived' },
  ratedPower: { why: 'the rated power of the drivers', source: 'derived' },
  tightChamber: { why: 'a tight chamber', source: 'derived' },
  tightOpenedChamber: {
    why: 'a tight chamber; opened boxes of 25 to 100 L measure 5 to 10 (Small 1973)',
    source: 'small-1973-vented-box'
  },
  chamberAbsorption: { why: 'nothing in the chamber absorbs', source: 'derived' },
  boxAbsorption: { why: 'nothing in the box absorbs', source: 'derived' },
  portFriction: { why: 'no friction in the port', source: 'derived' },
  radiatorLoss: { why: 'a suspension without loss', source: 'derived' }
} as const satisfies DefaultTable
