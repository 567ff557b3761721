/** How far the inputs of a reading may lie from the plan, and what a hand meter adds. Our choices. */
export const readingJudgement = {
  /** Full or not, for each 12 V [V]. */
  restBandV: 0.15,
  /** A stated battery resistance. */
  statedBand: 0.1,
  /** Regulator, by temperature, for each 12 V [V]. */
  setBandV: 0.3,
  limitBand: 0.15,
  /** Length 5 %, section 3 %, temperature 6 %, and lugs. */
  cableBand: 0.12,
  fuseBand: 0.25,
  linkBand: 0.1,
  /** A body that nobody measured. */
  guessBand: 0.5,
  /** Music is no steady load. */
  musicBand: 0.3,
  loadBand: 0.05,
  vehicleBandA: 10,
  meter: {
    V: { share: 0.005, least: 0.02 },
    mV: { share: 0.005, least: 0.002 },
    A: { share: 0.03, least: 1 },
    ohm: { share: 0.04, least: 0.0001 }
  }
} as const
