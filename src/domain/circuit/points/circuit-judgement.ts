/** Judgement values of a whole circuit: no publication fixes them, every one used is echoed to the caller. */
export const circuitJudgement = {
  chargingOhmPer12V: { value: 0.2, why: 'a nearly full battery takes charge through about 0.2 Ω per 12 V' },
  slopeOhm: { value: 0.002, why: 'the regulator lets its voltage fall by 2 mV per ampere' },
  jointOhm: { value: 0.0002, why: 'a good lug or contact, 0.2 mΩ' },
  joints: { value: 2, why: 'a lug at each end' },
  conductorTemperatureC: { value: 20, why: 'cables at 20 °C' },
  /** For the smallest fault: PVC at work. */
  warmC: 60,
  /** What a fuse-link carries of its rating for hours, and what a supply below nominal adds to its music; the first from memory, the second our choice. */
  fuseOverload: 1.1,
  /** A discharged battery, below its rest voltage, for each 12 V. */
  weakBelowRestV: 0.4
} as const
