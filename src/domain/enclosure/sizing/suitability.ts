/** Whether a candidate suits the driver and the space, each reason with its figures; limits stand in sizing-judgement.ts. */

import type { CandidateResponse } from '../../../contract/enclosures/enclosure-sizing.ts'
import { inDigits, inLitres } from '../../digits.ts'
import { driverDefaults } from '../../driver/sheet/defaults.ts'
import { SWEPT_VOLUMES } from '../model/air-spring.ts'
import { sizingDefaults } from './defaults.ts'

export interface Reason {
  readonly against: boolean
  readonly text: string
}

export function spaceReason(totalM3: number, spaceM3: number | undefined): readonly Reason[] {
  if (spaceM3 === undefined) return []
  const spare = spaceM3 - totalM3
  const against = spare < -1e-9 * spaceM3
  const text = against
    ? `needs ${inLitres(totalM3)}, ${inLitres(-spare)} more than the space`
    : `needs ${inLitres(totalM3)} of the ${inLitres(spaceM3)} of space`
  return [{ against, text }]
}

/** @param rippleDb  of the alignment itself: what the coil's inductance adds is shown with the response, not held against the box */
export function bandReasons(
  { f3Hz }: CandidateResponse,
  rippleDb: number,
  rippleLimitDb = sizingDefaults.rippleLimitDb.value
): readonly Reason[] {
  const reasons: Reason[] = []
  if (f3Hz === undefined) reasons.push({ against: true, text: 'never reaches half power of its reference' })
  else if (f3Hz > sizingDefaults.highestF3Hz.value) {
    reasons.push({ against: true, text: `half power only at ${inDigits(f3Hz)} Hz: no low bass of its own` })
  }
  if (rippleDb > rippleLimitDb) {
    reasons.push({ against: true, text: `${inDigits(rippleDb)} dB of ripple, more than ${rippleLimitDb} dB` })
  }
  return reasons
}

interface Cones {
  readonly sdM2: number
  readonly xmaxM: number | undefined
  readonly count: number
}

/**
 * Least air behind the cones for the box to be called suitable: neither air squeezed beyond what Xmax itself allows, nor a
 * box smaller than what stands in it.
 *
 *   V ≥ N·6·Sd·Xmax   V ≥ N·(2/3)·π·a³,  a = √(Sd/π)
 *
 * @source derived, limits ours: see SWEPT_VOLUMES of the air spring, and the half sphere behind each cone
 * @check  490 cm², Xmax 14 mm → 4.12 L by the sweep, 4.08 L by the half sphere
 */
export function leastAirReason(airM3: number, { sdM2, xmaxM, count }: Cones): readonly Reason[] {
  const sweptM3 = count * sdM2 * (xmaxM ?? 0)
  const driversM3 = count * (2 / 3) * Math.PI * Math.sqrt(sdM2 / Math.PI) ** 3
  if (airM3 < SWEPT_VOLUMES * sweptM3) {
    const text = `${inLitres(airM3)} is ${inDigits(airM3 / sweptM3)} times the ${inLitres(sweptM3)} that Sd·Xmax sweeps, less than ${SWEPT_VOLUMES} times: the air spring alone distorts by more than a tenth`
    return [{ against: true, text }]
  }
  if (airM3 >= driversM3) return []
  const text = `${inLitres(airM3)} is less than the drivers themselves take behind their cones (${inLitres(driversM3)})`
  return [{ against: true, text }]
}

/** A rule of thumb: it is told, and only counts against a kind where it is clearly on the other side. */
export function ebpReason(ebpHz: number, kind: 'closed' | 'opened'): Reason {
  const [closed, opened] = driverDefaults.ebpLimitsHz.value
  const rule = `fs/Qes ${inDigits(ebpHz)} Hz (practice: below ${closed} closed, above ${opened} vented or band-pass)`
  const contrary = kind === 'closed' ? ebpHz > 2 * opened : ebpHz < closed
  const leans = ebpHz < closed ? 'leans to closed' : ebpHz > opened ? 'leans to vented' : 'suits both'
  return { against: contrary, text: `${rule} ${leans}` }
}
