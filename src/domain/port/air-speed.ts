/** One policy for the speed of the air in ports, for every room that judges it. */
import type { CautionLevel } from '../../contract/cautions/entry.ts'

/**
 * Peak air speeds [m/s]: 17, 5 % of the speed of sound, from which sharp ends are heard (Small 1973, from memory); 25, from
 * which flared ends are heard too (ours); 34, 10 % of the speed of sound, beyond which nothing is built (common practice, no source).
 */
export const portSpeeds = { sharp: 17, flared: 25, highest: 34 } as const

/** What a speed is worth saying, whatever it was sized for. */
export function airSpeedLevel(speedMPerS: number): CautionLevel | undefined {
  if (speedMPerS > portSpeeds.highest) return 'stop'
  if (speedMPerS > portSpeeds.flared) return 'care'
  return speedMPerS > portSpeeds.sharp ? 'note' : undefined
}
