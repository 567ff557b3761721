/** Whether a fault behind a branch fuse leaves the main fuse whole. */

import type { Selectivity } from '../../../contract/supply/supply-fuses.ts'
import { fuseDefaults } from './defaults.ts'

/** @source rating ratio 1.6 of one family, idea of IEC 60269, from memory. @check 150 A over 80 A → 1.875, selective */
export function selectivity(mainA: number, branchRatingA: number): Selectivity {
  const ratio = mainA / branchRatingA
  return { branchRatingA, ratio, selective: ratio >= fuseDefaults.selectivityRatio.value * (1 - 1e-12) }
}
