/** Which of several limits is reached first at each frequency. */

import type { LimitSegment } from '../../../contract/enclosures/large-signal.ts'
import type { LimitName } from '../../../contract/enclosures/words.ts'

/** The largest RMS voltage of a sine that keeps to one limit, per frequency. */
export interface LimitCurve {
  readonly limit: LimitName
  readonly voltageV: Float64Array
}

export interface Governing {
  readonly voltageV: Float64Array
  readonly limit: readonly LimitName[]
  readonly segments: readonly LimitSegment[]
}

function segmentsOf(frequenciesHz: Float64Array, limit: readonly LimitName[]): readonly LimitSegment[] {
  const segments: LimitSegment[] = []
  for (const [index, name] of limit.entries()) {
    const at = frequenciesHz[index] ?? 0
    const last = segments.at(-1)
    if (last?.limit === name) segments[segments.length - 1] = { ...last, toHz: at }
    else segments.push({ limit: name, fromHz: at, toHz: at })
  }
  return segments
}

/**
 * The lowest of the curves and the limit it belongs to.
 *
 *   V_max(f) = min over limits of V_limit(f)
 *
 * @param curves  at least one, each of the length of the frequencies
 */
export function governingLimit(frequenciesHz: Float64Array, curves: readonly LimitCurve[]): Governing {
  const voltageV = new Float64Array(frequenciesHz.length).fill(Number.POSITIVE_INFINITY)
  const limit: LimitName[] = Array.from(frequenciesHz, () => curves[0]?.limit ?? 'cone-excursion')
  for (const curve of curves) {
    for (const [index, voltage] of curve.voltageV.entries()) {
      if (voltage >= (voltageV[index] as number)) continue
      voltageV[index] = voltage
      limit[index] = curve.limit
    }
  }
  return { voltageV, limit, segments: segmentsOf(frequenciesHz, limit) }
}
