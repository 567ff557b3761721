/** The next size of a series that a fuse may protect. */
import { ampacity } from '../cable/ampacity.ts'
import { cableJudgement } from '../cable/cable-judgement.ts'
import { cableSize } from '../cable/cable-size.ts'
import type { ProtectedCable } from './protected-cable.ts'

/** @returns the smallest trade size whose ampacity reaches the rating, in the same surroundings and metal; undefined if none does */
export function strongerCable(
  cable: ProtectedCable,
  ratingA: number
): { readonly designation: string; readonly ampacityA: number } | undefined {
  const { system } = cable.size
  const sizes = { awg: cableJudgement.awgSizes, sae: cableJudgement.saeSizes, mm2: cableJudgement.metricSizes }[system]
  for (const text of sizes) {
    const size = cableSize(text, system, '')
    const { ampacityA = 0 } = ampacity(size, cable.material, cable.surroundings)
    if (ampacityA >= ratingA) return { designation: size.designation, ampacityA }
  }
  return undefined
}
