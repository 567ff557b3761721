/** Judgement values of the cable room: no publication fixes them, every one used is echoed to the caller. */

export const cableJudgement = {
  /** Allowance of stranded over solid conductor; agrees with NFPA 70 Chapter 9 Table 8. */
  strandingFactor: {
    value: 1.02,
    why: 'stranded conductor, 2 % above the solid one (agrees with NFPA 70 Ch. 9 Table 8)'
  },
  insulationC: {
    value: 80,
    why: 'insulation not stated: common vehicle PVC, 80 °C; use a higher class only if it is printed on the cable'
  },
  ambientEngineBayC: {
    value: 70,
    why: 'a run from the battery usually crosses the engine bay: 70 °C; its hottest stretch decides'
  },
  ambientCabinC: { value: 50, why: 'closed cabin or boot in summer: 50 °C' },
  bundledConductors: { value: 1, why: 'no other power conductor in the same loom' },
  dropTemperatureC: {
    value: 20,
    why: 'drop is judged at 20 °C as cable tables print it; the hot drop is given beside it'
  },
  conductor: {
    value: 'copper',
    why: 'full copper as in the ampacity table; say "unknown" when no copper standard is printed on the cable'
  },
  metricResistance: {
    value: 'iec-60228-class-5',
    why: 'largest resistance of flexible metric conductors; stated tables beat the nominal area'
  },
  /** Sizes on sale everywhere; odd gauges and 3/0 are rare. */
  awgSizes: ['16', '14', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0'],
  saeSizes: ['16', '14', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0'],
  metricSizes: ['1.5', '2.5', '4', '6', '10', '16', '25', '35', '50', '70', '95'],
  metricAluminiumSizes: ['10', '16', '25', '35', '50', '70', '95'],
  /** Strands fill three quarters of the circle around them; surface of black or coloured plastic. */
  fillFactor: 0.75,
  emissivity: 0.9,
  /** Insulation wall [m] up to a conductor area [m²]; ISO 6722 thick wall, from memory. */
  walls: [
    [1.1e-6, 0.6e-3],
    [2.6e-6, 0.7e-3],
    [6.5e-6, 0.8e-3],
    [18e-6, 1e-3],
    [40e-6, 1.3e-3],
    [75e-6, 1.5e-3],
    [Number.POSITIVE_INFINITY, 1.6e-3]
  ]
} as const
