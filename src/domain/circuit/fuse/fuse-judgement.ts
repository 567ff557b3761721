/** Judgement values of the fuse room: no publication fixes them for cars, every one used is echoed to the caller. */

export const fuseJudgement = {
  loadRatio: { value: 0.75, why: 'continuous load at most 75 % of the rating, common practice (75 to 80 %)' },
  /** Dense bass draws this share of the full sine in the thirstiest law, class AB at 1/3 of its output. */
  heavyShare: Math.sqrt(1 / 3),
  heavyWhy: 'dense bass as class AB draws it, √(1/3) of the full sine; give heavyCurrentA from the current calculation',
  /** Families considered when the caller names none: blades and strips, single-bolt fuses where 58 V are needed. */
  usualTypes: { 32: ['C', 'E', 'SF30', 'SF51'], 58: ['C', 'E', 'single-bolt'] },
  policy: 'strict',
  cfrPolicyFactor: 1.5,
  cfrPolicyBelowV: 50,
  selectivityRatio: 1.6,
  clearingMultiple: 3,
  /** 7 in, 33 CFR 183.455(b)(1), rounded down: it is a limit. */
  idealM: 0.175,
  usualM: 0.45,
  sheathedM: 1.016,
  batteryOhmPer12V: {
    value: 0.01,
    why: 'battery 10 mΩ per 12 V (3 to 20) for drop and clearing, 3 mΩ and 12.8 V for what the fuse must break, common practice; from its cold cranking current when given'
  },
  /** Lower end of the same range, for what a fuse must break. */
  batteryLowestOhmPer12V: {
    value: 0.003,
    why: 'battery 3 mΩ per 12 V for what the fuse must break, the strong end of 3 to 20, common practice; give its resistance, cold cranking current, or kind and capacity'
  },
  /** A warm full battery: volts over cold cranking current; our choice. */
  crankingLowestV: 2,
  /** Highest rest voltage over the usual one, for each 12 V: a full lead battery after charging, a full lithium one; from memory. */
  batteryAboveRestV: 0.2,
  lithiumAboveRestV: 0.8,
  batteryRestVPer12V: 12.6,
  /** Lithium iron phosphate, four cells, not fresh from the charger; from memory. */
  lithiumRestVPer12V: 13.2,
  crankingEndV: 7.2,
  /** Fuse resistance is this voltage over its rating; two data-sheet points at 40 A: 75 mV and 96 mV. */
  fuseDropV: 0.09,
  /** The same cold: a data sheet gives 1.4 mΩ at 40 A (second-hand). */
  coldFuseV: 0.057
} as const

/** Resistance times capacity, both ends [Ω·A·h for each 12 V]; data sheets of AGM batteries lie at 0.32 and 0.49, the ends are our choice. */
export const batteryOhmAh = {
  agm: { lowest: 0.25, highest: 0.8 },
  gel: { lowest: 0.4, highest: 1.2 },
  lithium: { lowest: 0.06, highest: 1.2 }
} as const

/** Allowed share of the rating by fuse ambient [°C], type E 40 A, from a data sheet (second-hand); straight between. */
export const fuseDeratingTypeE = {
  source: 'fuse-derating',
  allowedAOf40: [
    [20, 40],
    [65, 34],
    [85, 30],
    [110, 25],
    [125, 22]
  ]
} as const
