/** Where the bass hands over to the front speakers; the response and the signal part use the same corner. */

/** Common practice, no source: above 120 Hz the ear finds the box, below 50 Hz the front speakers strain. */
const HAND_OVER_HZ = { lowest: 50, highest: 120 } as const
/** 24 dB an octave, as most amplifiers offer. Common practice, no source. */
export const CROSSOVER_ORDER = 4

/** Where the mains begin, held inside what a subwoofer can hand over at. */
export function crossoverFor(mainsLowHz: number): number {
  const { lowest, highest } = HAND_OVER_HZ
  return Math.min(highest, Math.max(lowest, mainsLowHz))
}
