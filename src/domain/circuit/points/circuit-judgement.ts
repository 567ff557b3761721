/** Judgement values of a whole circuit: no publication fixes them, every one used is echoed to the caller. */
export const circuitJudgement = {
  chargingOhmPer12V: { value: 0.2, why: 'a nearly full battery takes charge through about 0.2 Ω per 12 V' },
  slopeOhm: { value: 0.002, why: 'the regulator lets its voltage fall by 2 mV per ampere' },
  jointOhm: { value: 0.0002, why: 'a good lug or contact, 0.2 mΩ' },
  converterOhm: { value: 0.002, why: 'a converter lets its voltage fall by 2 mV per ampere' },
  converterLowestShare: {
    value: 0.75,
    why: 'a converter stops below three quarters of the nominal input: 18 V of 24 V in the data sheets seen'
  },
  /** What a converter gives into a fault, over its rating: 1.1 to 1.5 in the data sheets seen. */
  converterOverload: 1.5,
  joints: { value: 2, why: 'a lug at each end' },
  conductorTemperatureC: { value: 20, why: 'cables at 20 °C' },
  /** For the smallest fault: PVC at work. */
  warmC: 60,
  /** What a fuse-link carries of its rating for hours, and what a supply below nominal adds to its music; the first from memory, the second our choice. */
  fuseOverload: 1.1,
  /** A discharged battery, below its rest voltage, for each 12 V. */
  weakBelowRestV: 0.4
} as const
