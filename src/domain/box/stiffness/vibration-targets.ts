/** What a panel has to reach; engineering choices of this service, not a standard. */
export const bracingTargets = {
  /** Top of the band when the caller names none [Hz]. */
  upperHz: 120,
  /** Lowest panel frequency over the top of the band. */
  frequencyRatio: 1.5,
  /** Share of the cone's volume that all panels together may move. */
  volumeShare: 0.02,
  /** Furthest a panel may bend [m]. */
  deflectionM: 0.15e-3
} as const
