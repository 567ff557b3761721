/** Whether a candidate suits the driver and the space, each reason with its figures; limits stand in sizing-judgement.ts. */
import type { CandidateResponse } from './sizing.ts'
import { EBP_LIMITS_HZ, HIGHEST_F3_HZ, RIPPLE_LIMIT_DB } from './sizing-judgement.ts'

export interface Reason {
  readonly against: boolean
  readonly text: string
}

export const figure = (value: number, digits = 3): string => String(Number(value.toPrecision(digits)))
export const litres = (volumeM3: number): string => `${figure(volumeM3 * 1e3)} L`

export function spaceReason(totalM3: number, spaceM3: number | undefined): readonly Reason[] {
  if (spaceM3 === undefined) return []
  const spare = spaceM3 - totalM3
  const against = spare < -1e-9 * spaceM3
  const text = against
    ? `needs ${litres(totalM3)}, ${litres(-spare)} more than the space`
    : `needs ${litres(totalM3)} of the ${litres(spaceM3)} of space`
  return [{ against, text }]
}

/** @param rippleDb  of the alignment itself: what the coil's inductance adds is shown with the response, not held against the box */
export function bandReasons(
  { f3Hz }: CandidateResponse,
  rippleDb: number,
  rippleLimitDb = RIPPLE_LIMIT_DB
): readonly Reason[] {
  const reasons: Reason[] = []
  if (f3Hz === undefined) reasons.push({ against: true, text: 'never reaches half power of its reference' })
  else if (f3Hz > HIGHEST_F3_HZ) {
    reasons.push({ against: true, text: `half power only at ${figure(f3Hz)} Hz: no low bass of its own` })
  }
  if (rippleDb > rippleLimitDb) {
    reasons.push({ against: true, text: `${figure(rippleDb)} dB of ripple, more than ${rippleLimitDb} dB` })
  }
  return reasons
}

/** A rule of thumb: it is told, and only counts against a kind where it is clearly on the other side. */
export function ebpReason(ebpHz: number, kind: 'closed' | 'opened'): Reason {
  const [closed, opened] = EBP_LIMITS_HZ
  const rule = `fs/Qes ${figure(ebpHz)} Hz (practice: below ${closed} closed, above ${opened} vented or band-pass)`
  const contrary = kind === 'closed' ? ebpHz > 2 * opened : ebpHz < closed
  const leans = ebpHz < closed ? 'leans to closed' : ebpHz > opened ? 'leans to vented' : 'suits both'
  return { against: contrary, text: `${rule} ${leans}` }
}
