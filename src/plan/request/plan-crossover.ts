/** Where the bass hands over to the front speakers; the response and the signal part use the same corner. */
import { planDefaults } from './defaults.ts'

/** Where the mains begin, held inside what a subwoofer can hand over at. */
export function crossoverFor(mainsLowHz: number): number {
  const { lowestHandOverHz, highestHandOverHz } = planDefaults
  return Math.min(highestHandOverHz.value, Math.max(lowestHandOverHz.value, mainsLowHz))
}
