import type { BatteryChemistry } from '../../../contract/supply/words.ts'

/** Peukert’s exponent by kind of battery. Common practice, no source. */
export const usualExponent: Readonly<Record<BatteryChemistry, number>> = {
  agm: 1.12,
  gel: 1.12,
  flooded: 1.24,
  lithium: 1.05
}
