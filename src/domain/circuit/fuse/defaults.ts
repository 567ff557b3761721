/** What stands in for absent fields of a fuse and its source, and what this service judges one by. */
import type { DefaultTable } from '../../default.ts'

export const fuseDefaults = {
  loadRatio: {
    value: 0.75,
    unit: '1',
    why: 'continuous load at most 75 % of the rating, common practice (75 to 80 %)',
    source: 'practice'
  },
  heavyShare: {
    value: Math.sqrt(1 / 3),
    unit: '1',
    why: 'dense bass as class AB draws it, √(1/3) of the full sine; give heavyCurrentA from the current calculation',
    source: 'derived'
  },
  fuseAmbientC: { why: 'the fuse lies in the surroundings of its cable', source: 'practice' },
  hottestFuseC: { value: 125, unit: '°C', why: 'where the derating of the data sheet ends', source: 'fuse-derating' },
  usualTypes32V: {
    value: ['C', 'E', 'SF30', 'SF51'],
    unit: 'word',
    why: 'blades and strips are what is sold for cars',
    source: 'practice'
  },
  usualTypes58V: {
    value: ['C', 'E', 'single-bolt'],
    unit: 'word',
    why: 'single-bolt fuses where 58 V are needed',
    source: 'practice'
  },
  policy: { value: 'strict', unit: 'word', why: 'rating at most the ampacity of the cable', source: 'ours' },
  cfrPolicyFactor: {
    value: 1.5,
    unit: '1',
    why: '150 % of the table where a boat’s rule allows it',
    source: '33-cfr-183-455'
  },
  cfrPolicyBelowV: { value: 50, unit: 'V', why: 'circuits under 50 V', source: '33-cfr-183-455' },
  selectivityRatio: {
    value: 1.6,
    unit: '1',
    why: 'of ratings in series, so that the nearer one opens',
    source: 'practice'
  },
  clearingMultiple: {
    value: 3,
    unit: '1',
    why: 'times its rating a fault must drive to open a fuse soon',
    source: 'practice'
  },
  idealM: { value: 0.175, unit: 'm', why: '7 in to the fuse, rounded down: it is a limit', source: '33-cfr-183-455' },
  usualM: { value: 0.45, unit: 'm', why: 'as far as a fuse is usually let stand from its battery', source: 'practice' },
  sheathedM: {
    value: 1.016,
    unit: 'm',
    why: '40 in, where the conductor is sheathed all the way',
    source: '33-cfr-183-455'
  },
  tailOhm: { why: 'the planned piece of cable before the fuse, once', source: 'ours' },
  onThePost: { why: 'the fuse on the battery post, where a short circuit is strongest', source: 'ours' },
  batteryOhmPer12V: {
    value: 0.01,
    unit: 'Ω',
    why: 'battery 10 mΩ per 12 V (3 to 20) for drop and clearing, 3 mΩ and 12.8 V for what the fuse must break, common practice; from its cold cranking current when given',
    source: 'practice'
  },
  batteryLowestOhmPer12V: {
    value: 0.003,
    unit: 'Ω',
    why: 'battery 3 mΩ per 12 V for what the fuse must break, the strong end of 3 to 20, common practice; give its resistance, cold cranking current, or kind and capacity',
    source: 'practice'
  },
  crankingLowestV: {
    value: 2,
    unit: 'V',
    why: 'a warm full battery: volts over cold cranking current',
    source: 'ours'
  },
  crankingEndV: {
    value: 7.2,
    unit: 'V',
    why: 'where the cold test of a battery ends, for each 12 V',
    source: 'practice'
  },
  batteryRestVPer12V: { value: 12.6, unit: 'V', why: 'a full lead battery at rest', source: 'practice' },
  lithiumRestVPer12V: {
    value: 13.2,
    unit: 'V',
    why: 'lithium iron phosphate, four cells, not fresh from the charger',
    source: 'practice'
  },
  batteryAboveRestV: {
    value: 0.2,
    unit: 'V',
    why: 'a full lead battery after charging over one at rest, for each 12 V',
    source: 'practice'
  },
  lithiumAboveRestV: { value: 0.8, unit: 'V', why: 'the same of a full lithium one', source: 'practice' },
  openCircuitV: { why: 'the highest rest voltage', source: 'practice' },
  fuseDropV: {
    value: 0.09,
    unit: 'V',
    why: 'over its rating the resistance of a fuse; two data-sheet points at 40 A: 75 mV and 96 mV',
    source: 'practice'
  },
  coldFuseV: { value: 0.057, unit: 'V', why: 'the same cold: a data sheet gives 1.4 mΩ at 40 A', source: 'practice' }
} as const satisfies DefaultTable
