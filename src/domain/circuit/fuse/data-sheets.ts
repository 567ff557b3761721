/** Figures of fuse-links and batteries as data sheets give them. */

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
