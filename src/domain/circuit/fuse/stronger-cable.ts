/** The next size of a series that a fuse may protect. */

import type { FusePolicy } from '../../../contract/supply/words.ts'
import { ampacity } from '../cable/ampacity.ts'
import { cableSize } from '../cable/cable-size.ts'
import { cableDefaults } from '../cable/defaults.ts'
import { highestFuse, type ProtectedCable } from './protected-cable.ts'

/**
 * The smallest trade size that carries the load for good and may be fused at the rating by the same policy.
 *
 * @returns the size in the same surroundings and metal; undefined if none does
 */
export function strongerCable(
  cable: ProtectedCable,
  ratingA: number,
  loadA: number,
  policy: FusePolicy,
  systemVoltageV: number
): { readonly designation: string; readonly ampacityA: number; readonly highestFuseA: number } | undefined {
  const { system } = cable.size
  const sizes = {
    awg: cableDefaults.awgSizes.value,
    sae: cableDefaults.saeSizes.value,
    mm2: cableDefaults.metricSizes.value
  }[system]
  for (const text of sizes) {
    const size = cableSize(text, system, '')
    const carries = ampacity(size, cable.material, cable.surroundings)
    const highestFuseA = highestFuse(policy, carries, systemVoltageV)
    const { ampacityA = 0 } = carries
    if (ampacityA >= loadA && highestFuseA >= ratingA) return { designation: size.designation, ampacityA, highestFuseA }
  }
  return undefined
}
